import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { TextField } from "../../../ui/field.js";
import { say } from "../../../ui/notice.js";
import { beginReport } from "../report/state.js";
import { clock } from "../run/state.js";
import { words } from "../words.js";
import { ask } from "./ask.js";
import { isPaddock, member } from "./place.js";

const { join: said, noPaddock, desk } = words.paddock;

/** What the address of a code brings along. */
const codeInAddress = (): string => /[?&]code=([a-z0-9]{1,20})/i.exec(location.hash)?.[1] ?? "";

/** A phone joins the day: by its code, under a name. */
export function Join() {
  const code = useSignal(codeInAddress());
  const drivers = useSignal<readonly string[] | undefined>(undefined);
  const fault = useSignal<string | undefined>(undefined);
  const look = async () => {
    const answer = await ask("hello", { code: code.value });
    const names = answer?.fields.drivers;
    fault.value = answer?.status === 200 ? undefined : faultIn(answer);
    drivers.value = answer?.status === 200 && Array.isArray(names) ? names.map(String) : undefined;
  };
  const type = (text: string) => {
    code.value = text.trim().toLowerCase();
  };
  useEffect(() => {
    if (isPaddock() && code.value !== "") void look();
  }, []);
  return (
    <>
      <h2 tabIndex={-1}>{said.title}</h2>
      {!isPaddock() && <p>{noPaddock}</p>}
      {isPaddock() && drivers.value === undefined && (
        <>
          <TextField
            id="join-code"
            label={said.code}
            note={said.codeHelp}
            value={code.value}
            fault={fault.value}
            type={type}
          />
          <Button id="join-look" large work={() => void look()}>
            {said.look}
          </Button>
        </>
      )}
      {drivers.value && <Names code={code.value} drivers={drivers.value} />}
      {isPaddock() && <GoodToKnow />}
    </>
  );
}

/** Where names go, and what a phone does here that it does not at home. */
function GoodToKnow() {
  return (
    <>
      <p>{said.stays}</p>
      <p class="quiet">{said.network}</p>
      <p class="quiet">{location.protocol === "http:" ? said.plain : said.secure}</p>
    </>
  );
}

/** What the desk's machine says is wrong; its own sentence, where it answers. */
const faultIn = (answer: Awaited<ReturnType<typeof ask>>): string =>
  typeof answer?.fields.fault === "string" ? answer.fields.fault : desk.failed;

function Names({ code, drivers }: { readonly code: string; readonly drivers: readonly string[] }) {
  const other = useSignal("");
  const join = async (name: string) => {
    if (name === "" || name.length > 80) return say(said.nameFault);
    const answer = await ask("join", { code, name });
    const { token } = answer?.fields ?? {};
    if (answer?.status !== 200 || typeof token !== "string") return say(faultIn(answer));
    await member.set({ role: "phone", token, name, at: new Date().toISOString() });
    beginReport(name, clock.now.value.run);
    location.hash = "#report";
    say(said.as(name));
  };
  return (
    <>
      <Chips
        id="join-name"
        question={said.who}
        choices={drivers.map((value) => ({ value, text: value }))}
        chosen={undefined}
        choose={(name) => void join(name)}
      />
      <TextField
        id="join-other"
        label={said.other}
        value={other.value}
        type={(text) => {
          other.value = text;
        }}
      />
      <Button id="join-go" work={() => void join(other.value.trim())}>
        {said.go}
      </Button>
    </>
  );
}
