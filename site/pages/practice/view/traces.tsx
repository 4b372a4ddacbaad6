import { useSignal } from "@preact/signals";
import {
  type ChannelName,
  channelNames,
  channelsOf,
  cornerParts,
  type DrivenCorner,
  type Drives,
  driveFacts,
  driveNames,
  drivenLength,
  type Parameter,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { driveSays, hereSays } from "../../../say/practice/drive.js";
import { words } from "../../../say/practice/words.js";
import { Button } from "../../../ui/button.js";
import { SliderRow } from "../../../ui/slider-row.js";
import type { Round } from "../state.js";
import { chartOf, type Look, tones } from "./charts.js";
import { difference } from "./difference.js";
import { differenceAbove } from "./difference-above.js";
import { Picture } from "./picture.js";
import { planView } from "./plan-view.js";
import { usePlayer } from "./player.js";
import { Values } from "./values.js";

interface Driven {
  readonly round: Round;
  readonly drives: Drives;
}

/** Plan view and traces of a round's drives, all read at one place along the corner. */
export function Traces({ round, drives }: Driven) {
  const { practice, puzzle } = round;
  const { known } = drives;
  const distance = useSignal(cornerParts(known)[2]?.from ?? 0);
  const player = usePlayer(drives, distance);
  const look = { drives, distance: distance.value };
  const names = round.over ? channelNames : channelsOf(puzzle.level);
  const slide = (to: number) => {
    player.halt();
    distance.value = to;
  };
  return (
    <figure class="figure" id="traces" data-live="">
      <figcaption>{practice.corner.name}</figcaption>
      <Legend drives={drives} />
      <p class="says">{driveSays(driveFacts(practice, drives), reader.units)}</p>
      <div class="along">
        <Button id="play" work={player.press}>
          {player.label}
        </Button>
        <SliderRow id="place" parameter={placeOf(known)} value={distance.value} report={slide} />
      </div>
      <p class="here" aria-live={player.playing ? "off" : "polite"}>
        {hereSays(drives, distance.value, reader.units)}
      </p>
      <Pictures round={round} names={names} look={look} />
      <Values look={look} names={names} />
    </figure>
  );
}

interface Pictured {
  readonly round: Round;
  readonly names: readonly ChannelName[];
  readonly look: Look;
}

/** The plan view and the traces. */
function Pictures({ round: { practice }, names, look }: Pictured) {
  const { known } = look.drives;
  const fault = useSignal("");
  const plan = useMemo(() => planView(practice.car, known), []);
  const showsSlip = names.includes("sideSlip");
  const above = useMemo(() => differenceAbove(practice.car, known, showsSlip), [showsSlip]);
  const title = words.alongTitle(practice.corner.name);
  const tell = (sentence: string) => {
    fault.value = sentence;
  };
  return (
    <>
      <p class="fault" role="alert" hidden={fault.value === ""}>
        {fault.value}
      </p>
      <div class="panels">
        <Captioned by={look.drives.changed ? words.difference.aboveHelp : words.wheelLoads}>
          <Picture
            key={String(showsSlip)}
            panel={above}
            title={words.difference.title}
            look={look}
            tell={tell}
          />
        </Captioned>
        {look.drives.changed && (
          <Captioned by={words.difference.steering}>
            <Picture panel={difference} title={words.difference.title} look={look} tell={tell} />
          </Captioned>
        )}
        <Captioned by={words.planHelp}>
          <Picture panel={plan} title={title} look={look} tell={tell} />
        </Captioned>
      </div>
      <TracesOf names={names} known={known} title={title} look={look} tell={tell} />
    </>
  );
}

/** A picture under what is said of it. */
function Captioned({
  by,
  children,
}: {
  readonly by: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="captioned">
      <p>{by}</p>
      {children}
    </div>
  );
}

interface Traced {
  readonly known: DrivenCorner;
  readonly title: string;
  readonly look: Look;
  readonly tell: (sentence: string) => void;
}

/** The traces, folded up. */
function TracesOf({ names, ...traced }: Traced & { readonly names: readonly ChannelName[] }) {
  return (
    <details class="traces">
      <summary>{words.traces}</summary>
      <div class="panels">
        {names.map((name) => (
          <Trace key={name} name={name} {...traced} />
        ))}
      </div>
    </details>
  );
}

function Trace({ name, known, title, look, tell }: Traced & { readonly name: ChannelName }) {
  const panel = useMemo(() => chartOf(name, known), []);
  return <Picture panel={panel} title={title} look={look} tell={tell} />;
}

function placeOf(known: DrivenCorner): Parameter {
  const max = Math.floor(drivenLength(known));
  return {
    name: words.place,
    symbol: "s",
    quantity: "length",
    min: 0,
    max,
    step: 1,
    start: 0,
    decimals: 0,
  };
}

/** The stroke of each drive that is shown. */
function Legend({ drives }: { readonly drives: Drives }) {
  return (
    <p class="legend">
      {driveNames
        .filter((name) => drives[name] !== undefined)
        .map((name) => (
          <span key={name} class={`drive ${tones[name]}`}>
            {words[name]}
          </span>
        ))}
    </p>
  );
}
