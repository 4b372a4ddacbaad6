import { signal } from "@preact/signals";
import { words } from "../say/ui.js";
import { Button } from "./button.js";

interface Said {
  readonly sentence: string;
  /** Takes back what was done. */
  readonly undo?: () => void;
}

/** What was said last. */
export const said = signal<Said>({ sentence: "" });

/** Says a sentence in the notice; with an undo it offers to take it back. */
export function say(sentence: string, undo?: () => void): void {
  said.value = undo === undefined ? { sentence } : { sentence, undo };
}

/** Leaves the notice empty. */
export const hush = (): void => say("");

/** One line, for eye and ear, on what was just done. */
export function Notice() {
  const { sentence, undo } = said.value;
  const back = () => {
    hush();
    undo?.();
  };
  return (
    <p role="status" class="notice">
      {sentence}
      {undo && (
        <>
          {" "}
          <Button id="undo" work={back}>
            {words.takeBack}
          </Button>
        </>
      )}
    </p>
  );
}
