import { log as said } from "../../../say/workshop/log.js";
import { write } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { sayKept } from "../parts/say-kept.js";

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
  const withdraw = () => {
    write({ kind: "withdrawal", of, reason: said.withdrawReason });
    sayKept(said.withdrawn);
  };
  return (
    <Button id={id} work={withdraw} aria-label={said.withdrawThis(what)}>
      {said.withdraw}
    </Button>
  );
}
