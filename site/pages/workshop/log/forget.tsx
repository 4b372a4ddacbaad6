import { useSignal } from "@preact/signals";
import { log as said } from "../../../say/workshop/log.js";
import { forgetWorkshop } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { focusSoon } from "../../../ui/focus.js";
import { say } from "../../../ui/notice.js";

/** Forgets all, after a second yes. */
export function Forget() {
  const asking = useSignal(false);
  const ask = () => {
    asking.value = true;
    focusSoon("#forget-not");
  };
  const leave = () => {
    asking.value = false;
    focusSoon("#forget");
  };
  const forget = () => {
    leave();
    void forgetWorkshop().then(() => say(said.forgotten));
  };
  return (
    <>
      <h3>{said.forget}</h3>
      <p class="quiet">{said.forgetHelp}</p>
      <p class="tools">
        {asking.value ? (
          <>
            <Button id="forget-sure" key="sure" work={forget}>
              {said.forgetSure}
            </Button>
            <Button id="forget-not" key="not" work={leave}>
              {said.cancel}
            </Button>
          </>
        ) : (
          <Button id="forget" key="start" work={ask}>
            {said.forgetStart}
          </Button>
        )}
      </p>
    </>
  );
}
