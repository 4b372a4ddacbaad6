import { GREATEST_BALANCE, MINUS, type Report } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { report as said } from "../../../say/workshop/report.js";
import { chips } from "../parts/chips.js";

/** −3 to +3 in a row, the rear at the left. */
export function balanceAsked(
  report: Report,
  answer: (field: "balance", balance: number) => void,
): HTMLElement {
  const scale = Array.from({ length: 2 * GREATEST_BALANCE + 1 }, (_, i) => i - GREATEST_BALANCE);
  const row = scale.map((value) => ({
    value,
    text: balanceText(value),
    spoken: `${balanceText(value)}: ${meaningOf(value)}`,
  }));
  const means = element("p", { class: "quiet", id: "balance-means" });
  const tell = (balance: number | undefined) => {
    means.textContent = balance === undefined ? said.balanceHelp : meaningOf(balance);
  };
  const chosen = (balance: number) => {
    tell(balance);
    answer("balance", balance);
  };
  tell(report.balance);
  const asked = chips("ask-balance", said.balance, row, report.balance, chosen, "scale");
  asked.append(
    element(
      "p",
      { class: "ends" },
      element("span", {}, `← ${said.rearSlides}`),
      element("span", {}, `${said.frontSlides} →`),
    ),
    means,
  );
  return asked;
}

const meaningOf = (balance: number): string =>
  said.balances[String(balance) as keyof typeof said.balances];

/** A balance as drivers write it: −2, 0, +1. */
export const balanceText = (balance: number): string =>
  balance > 0 ? `+${balance}` : balance < 0 ? `${MINUS}${-balance}` : "0";
