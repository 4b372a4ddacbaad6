import { useLayoutEffect, useRef } from "preact/hooks";
import { carWords as words } from "../../../say/your-car/cars.js";
import { hush, said } from "../../../ui/notice.js";

/** One line that says what was done, with a way back where there is one: the keyboard is on it then. */
export function Told() {
  const { sentence, undo } = said.value;
  const button = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    if (undo) button.current?.focus();
  }, [undo]);
  const back = () => {
    hush();
    undo?.();
  };
  return (
    <div class="told">
      <p class="status" role="status">
        {sentence}
      </p>
      <button type="button" ref={button} hidden={undo === undefined} onClick={back}>
        {words.undo}
      </button>
    </div>
  );
}
