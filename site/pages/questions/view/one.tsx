import { useSignal } from "@preact/signals";
import { words } from "../../../say/questions/words.js";
import { Button } from "../../../ui/button.js";
import { otherOf, type Which } from "../state.js";
import { Card } from "./card.js";
import { TopicChoice } from "./topic-choice.js";

/** Any question, explained at once. */
export function OnePart({
  which,
  show,
}: {
  readonly which: Which;
  readonly show: (which: Which) => void;
}) {
  const led = useSignal(false); // the reader went on to the twin
  const { idea, form } = which;
  const turn = () => {
    led.value = true;
    show(otherOf(which));
  };
  const choose = (chosen: Which["idea"]) => {
    led.value = false;
    show({ idea: chosen, form: "first" });
  };
  return (
    <>
      <TopicChoice chosen={idea} choose={choose} />
      <Card key={`${idea} ${form}`} which={which} occasion="single" focus={led.value}>
        <Button work={turn}>{form === "first" ? words.askTwin : words.askFirst}</Button>
      </Card>
    </>
  );
}
