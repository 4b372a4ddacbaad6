import { GREATEST_BALANCE } from "@rollbook/lib";
import { balanceText } from "../say/balance.js";
import { report as said } from "../say/workshop/report.js";
import { Chips } from "./chips.js";

const scale = Array.from({ length: 2 * GREATEST_BALANCE + 1 }, (_, i) => i - GREATEST_BALANCE);

const meaningOf = (balance: number): string =>
  said.balances[String(balance) as keyof typeof said.balances];

const choices = scale.map((value) => ({
  value,
  text: balanceText(value),
  spoken: `${balanceText(value)}: ${meaningOf(value)}`,
}));

/** −3 to +3 in a row, the rear at the left, and what the chosen one means. */
export function BalanceScale({
  balance,
  choose,
}: {
  readonly balance: number | undefined;
  readonly choose: (balance: number) => void;
}) {
  return (
    <Chips
      id="ask-balance"
      question={said.balance}
      choices={choices}
      chosen={balance}
      choose={choose}
      kind="scale"
    >
      <p class="ends">
        <span>← {said.rearSlides}</span>
        <span>{said.frontSlides} →</span>
      </p>
      <p class="quiet" id="balance-means">
        {balance === undefined ? said.balanceHelp : meaningOf(balance)}
      </p>
    </Chips>
  );
}
