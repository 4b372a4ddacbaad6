import { useSignal } from "@preact/signals";
import { sameName } from "@rollbook/lib";
import { useEffect } from "preact/hooks";
import { Button } from "../../../ui/button.js";
import { CodePicture } from "../../../ui/code-picture.js";
import { TextField } from "../../../ui/field.js";
import { say } from "../../../ui/notice.js";
import { openWall, Wall } from "../../../ui/wall.js";
import { filedDay } from "../day/reporter.js";
import { words } from "../words.js";
import { ask } from "./ask.js";
import { isDesk, isPaddock, member, type PhoneSeen, phones } from "./place.js";

const { desk: said, noPaddock } = words.paddock;

const secretInAddress = (): string => /[?&]secret=([\w-]{1,200})/.exec(location.hash)?.[1] ?? "";

/** Takes the secret out of the address, so that nobody reads it over a shoulder. */
function takenSecret(): string {
  const secret = secretInAddress();
  if (secret !== "") history.replaceState(null, "", "#desk");
  return secret;
}

/** The desk: how phones join, and who has. */
export function Desk() {
  return (
    <>
      <h2 tabIndex={-1}>{said.title}</h2>
      {!isPaddock() && <p>{noPaddock}</p>}
      {isPaddock() && (isDesk() ? <AtDesk /> : <Secret />)}
    </>
  );
}

function Secret() {
  const secret = useSignal(takenSecret());
  const fault = useSignal<string | undefined>(undefined);
  const go = async () => {
    const answer = await ask("desk", { secret: secret.value });
    fault.value = answer?.status === 200 ? undefined : answer ? said.secretFault : said.failed;
    if (answer?.status !== 200) return;
    const at = new Date().toISOString();
    await member.set({ role: "desk", token: secret.value, name: "", at });
  };
  useEffect(() => {
    if (secret.value !== "") void go();
  }, []);
  return (
    <>
      <TextField
        id="desk-secret"
        label={said.secret}
        note={said.secretHelp}
        value={secret.value}
        fault={fault.value}
        type={(text) => {
          secret.value = text.trim();
        }}
      />
      <Button id="desk-go" large work={() => void go()}>
        {said.go}
      </Button>
    </>
  );
}

/** What the desk's machine says of how to join. */
export interface Place {
  readonly code: string;
  readonly address: string;
  readonly network?: { readonly name: string; readonly code: string };
}

function AtDesk() {
  const place = useSignal<Place | undefined>(undefined);
  useEffect(() => {
    void ask("place").then((answer) => {
      if (answer?.status === 200) place.value = answer.fields as unknown as Place;
    });
  }, []);
  const now = place.value;
  return (
    <>
      {now && <HowToJoin place={now} />}
      <p class="tools">
        <Button id="open-codes-wall" work={openWall}>
          {said.wall}
        </Button>
        <Button id="leave-desk" work={() => member.clear()}>
          {said.leave}
        </Button>
      </p>
      <PhonesHere />
      {now && (
        <Wall label={said.wall} opener="open-codes-wall">
          <HowToJoin place={now} />
        </Wall>
      )}
    </>
  );
}

/** Large: the network, then the day; and the same to type. */
export function HowToJoin({ place: { address, code, network } }: { readonly place: Place }) {
  const link = `${address}/workshop.html#join?code=${code}`;
  return (
    <div class="codes">
      {network && (
        <figure class="code-to-take">
          <CodePicture link={network.code} label={said.joinNetwork(network.name)} />
          <figcaption>{said.joinNetwork(network.name)}</figcaption>
        </figure>
      )}
      <figure class="code-to-take">
        <CodePicture link={link} label={said.joinDay} />
        <figcaption>
          {network ? said.joinDay : said.joinOnly}{" "}
          <span class="quiet">{said.orType(address, code)}</span>
        </figcaption>
      </figure>
    </div>
  );
}

function PhonesHere() {
  const all = phones.value;
  const drivers = filedDay()?.drivers ?? [];
  const missing = drivers.filter((name) => !all.some((phone) => sameName(phone.name, name)));
  return (
    <>
      <h3>{said.phones(all.length)}</h3>
      {all.length === 0 && <p class="quiet">{said.none}</p>}
      <ul class="filed" id="phones">
        {all.map((phone) => (
          <PhoneLine key={phone.id} phone={phone} />
        ))}
      </ul>
      {drivers.length > 0 && (
        <p id="not-joined">{missing.length > 0 ? said.missing(missing.join(", ")) : said.allIn}</p>
      )}
    </>
  );
}

/** Tells the desk's machine what becomes of a phone, and the reader whether it did. */
async function tell(id: PhoneSeen["id"], body: object, sentence: string): Promise<void> {
  const answer = await ask(`phones/${id}`, body);
  say(answer?.status === 200 ? sentence : said.failed);
}

/** A phone that has joined, with what can be done about it. */
function PhoneLine({ phone: { id, name } }: { readonly phone: PhoneSeen }) {
  const other = useSignal<string | undefined>(undefined);
  const rename = () => {
    const to = (other.value ?? "").trim();
    other.value = undefined;
    if (to !== "") void tell(id, { name: to }, said.renamed(to));
  };
  return (
    <li>
      {other.value === undefined ? (
        <span>{name}</span>
      ) : (
        <TextField
          id={`rename-${id}`}
          label={said.renameTo(name)}
          value={other.value}
          type={(text) => {
            other.value = text;
          }}
          end={rename}
        />
      )}
      <PhoneButton
        text={said.rename}
        name={name}
        work={() => {
          other.value = name;
        }}
      />
      <PhoneButton
        text={said.remove}
        name={name}
        work={() => void tell(id, { removed: true }, said.removed(name))}
      />
    </li>
  );
}

interface Named {
  readonly text: string;
  /** Whose phone it is, to be read out. */
  readonly name: string;
  readonly work: () => void;
}

function PhoneButton({ text, name, work }: Named) {
  return (
    <Button aria-label={`${text}: ${name}`} work={work}>
      {text}
    </Button>
  );
}
