import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { Button } from "../../../ui/button.js";
import { sound } from "../run/sound.js";
import { words } from "../words.js";
import { type Finder, findingCodes } from "./finder.js";
import { type Scanned, takeCode } from "./scanned.js";

const { scan: said } = words;

const EVERY = 120; // ms between two looks
const MOST_SHOWN = 30;
const marks = { new: "✓", known: "=", "other day": "≠", "no code": "?" } as const;
const tones = { new: [660, 880], known: [440], "other day": [220, 220], "no code": [220] };

/** The camera reads one code after the other; nothing has to be tapped in between. */
export function ScanStation() {
  const open = useSignal(false);
  useEffect(() => {
    const away = () => {
      open.value = false;
    };
    addEventListener("hashchange", away);
    return () => removeEventListener("hashchange", away);
  }, []);
  return (
    <div class="scan" id="scan">
      <Button
        id="scan-codes"
        work={() => {
          open.value = !open.value;
        }}
      >
        {open.value ? said.stop : said.start}
      </Button>
      {open.value && <Camera />}
    </div>
  );
}

function Camera() {
  const video = useRef<HTMLVideoElement>(null);
  const fault = useSignal<string | undefined>(undefined);
  const results = useSignal<readonly Scanned[]>([]);
  useEffect(() => {
    const tell = (one: Scanned) => {
      results.value = [one, ...results.value].slice(0, MOST_SHOWN);
      sound(tones[one.kind]);
    };
    return scanning(video.current, tell, (sentence) => {
      fault.value = sentence;
    });
  }, []);
  const [last, ...before] = results.value;
  return (
    <>
      <p class="quiet">{said.help}</p>
      {fault.value !== undefined && <p class="beware">{fault.value}</p>}
      <video
        ref={video}
        muted
        playsInline
        aria-label={said.camera}
        hidden={fault.value !== undefined}
      />
      <div role="status" id="scanned">
        {last && (
          <p class={`scan-mark ${last.kind.replace(" ", "-")}`}>
            <b aria-hidden="true">{marks[last.kind]}</b> {last.sentence}
          </p>
        )}
      </div>
      <ol class="plain" id="scanned-before">
        {before.map((one, i) => (
          <li key={before.length - i}>{`${marks[one.kind]} ${one.sentence}`}</li>
        ))}
      </ol>
    </>
  );
}

/** Looks through the camera until it is stopped; a code that stays in sight is read once. */
function scanning(
  video: HTMLVideoElement | null,
  tell: (one: Scanned) => void,
  fail: (sentence: string) => void,
): () => void {
  const stopping = new AbortController();
  void run();
  return () => stopping.abort();

  async function run(): Promise<void> {
    if (video === null || typeof navigator.mediaDevices !== "object") return fail(said.noCamera);
    const stream = await navigator.mediaDevices
      .getUserMedia({ video: { facingMode: "environment", width: { ideal: 1280 } } })
      .catch(() => undefined);
    if (stream === undefined) return fail(said.refused);
    const { find, stop } = await findingCodes();
    const end = () => {
      stop();
      for (const track of stream.getTracks()) track.stop();
    };
    if (stopping.signal.aborted) return end();
    stopping.signal.addEventListener("abort", end);
    video.srcObject = stream;
    await video.play().catch(() => {});
    await looking(video, find, tell, stopping.signal);
  }
}

async function looking(
  video: HTMLVideoElement,
  find: Finder,
  tell: (one: Scanned) => void,
  stopped: AbortSignal,
): Promise<void> {
  let inSight: readonly string[] = [];
  while (!stopped.aborted) {
    const texts = await find(video);
    for (const text of texts) if (!inSight.includes(text)) tell(await takeCode(text));
    if (texts.length > 0) inSight = texts;
    await new Promise((again) => setTimeout(again, EVERY));
  }
}
