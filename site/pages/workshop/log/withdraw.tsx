import { log as said } from "../../../say/workshop/log.js";
import { Button } from "../../../ui/button.js";
import { withdraw } from "../parts/withdraw.js";

/** Takes an entry out of what counts; it stays in the log. */
export function Withdraw({
  id,
  of,
  what,
}: {
  readonly id: string;
  readonly of: string;
  readonly what: string;
}) {
  return (
    <Button
      id={id}
      work={() => withdraw(of, said.withdrawReason, said.withdrawn)}
      aria-label={said.withdrawThis(what)}
    >
      {said.withdraw}
    </Button>
  );
}
