import encodeQR from "qr";
import { buildIfChanged } from "../build/build-if-changed.js";
import { inRoot } from "../build/paths.js";
import { addressesHere, networkCode } from "../paddock/addresses.js";
import { certificateFrom } from "../paddock/server.js";
import { type Started, startPaddock } from "../paddock/start.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { codeOf, fromCaller, optionsOf, UsageError } from "./usage.js";

const usage = `Usage: npm run paddock -- --folder saturday --network "Club" --password "…"

  --folder    where the day is kept (paddock-day when left out)
  --address   of this machine in the network of the phones (its first one when left out)
  --port      8080 when left out
  --network   name of the network, for a code that joins it
  --password  of the network
  --cert, --key  a certificate of your own and its key, for https
  --course    a course that is built already (built when left out)`;

const asked = () =>
  optionsOf({
    options: {
      folder: { type: "string", default: "paddock-day" },
      address: { type: "string", default: "" },
      port: { type: "string", default: "8080" },
      network: { type: "string", default: "" },
      password: { type: "string", default: "" },
      cert: { type: "string", default: "" },
      key: { type: "string", default: "" },
      course: { type: "string", default: "" },
      help: { type: "boolean", default: false },
    },
  });

type Asked = ReturnType<typeof asked>["values"];

function portFrom({ port }: Asked): number {
  const number = Number(port);
  if (Number.isInteger(number) && number >= 0 && number <= 65535) return number;
  throw new UsageError(`--port is ${port}; it must be a whole number from 0 to 65535.`);
}

/** The address that phones use: the one that was asked for, if this machine has it. */
function addressFrom({ address }: Asked): string {
  const here = addressesHere();
  if (address === "") return here[0] ?? "127.0.0.1";
  if (address === "127.0.0.1" || here.includes(address)) return address;
  const known = here.length === 0 ? "none but 127.0.0.1" : here.join(", ");
  throw new UsageError(`--address is ${address}, but this machine has ${known}.`);
}

function secureFrom({ cert, key }: Asked) {
  if (cert === "" && key === "") return undefined;
  try {
    return certificateFrom(fromCaller(cert), fromCaller(key));
  } catch (error) {
    throw new UsageError(`--cert and --key must be two files that can be read (${codeOf(error)}).`);
  }
}

async function courseFrom({ course }: Asked): Promise<string> {
  if (course !== "") return fromCaller(course);
  await buildIfChanged(progressTo(process.stdout));
  return inRoot("dist");
}

async function start(): Promise<void> {
  const { values } = asked();
  if (values.help) return console.log(usage);
  const [port, address, certificate] = [portFrom(values), addressFrom(values), secureFrom(values)];
  const folder = fromCaller(values.folder);
  const course = await courseFrom(values);
  const { network: name, password } = values;
  const started = await startPaddock({
    ...{ folder, course, port, address },
    ...(certificate && { certificate }),
    ...(name !== "" && { network: { name, password } }),
  }).catch((error: unknown) => {
    throw new UsageError(
      `The day in ${folder} cannot be served at ${address}:${port} (${codeOf(error)}); choose another --folder, --address or --port.`,
    );
  });
  if (started.torn > 0) console.log(tornLine);
  if (started.unreadable > 0)
    console.log(
      `${started.unreadable} lines of the day cannot be read; they are left as they are.`,
    );
  tell(folder, started);
}

const tornLine =
  "The last line of the day was torn when the power went. It was never answered, and is taken off.";

/** What the desk needs to know, and codes that a phone's camera reads from the terminal. */
function tell(folder: string, { place, local }: Started): void {
  const { address: origin } = place;
  const link = `${origin}/workshop.html#join?code=${place.code}`;
  const others = addressesHere().filter((one) => !origin.includes(one));
  console.log(`The day is kept in ${folder} and stays on this machine.\n`);
  if (place.network !== undefined) {
    console.log(`1. Join the network ${place.network.name}:\n`);
    console.log(encodeQR(networkCode(place.network.name, place.network.password), "term"));
  }
  console.log(`Phones join at ${origin} with the code ${place.code}:\n`);
  console.log(encodeQR(link, "term"));
  if (others.length > 0)
    console.log(`This machine has other addresses too: ${others.join(", ")} (--address chooses).`);
  console.log(`The desk, on this machine: ${local}/workshop.html#desk?secret=${place.secret}`);
  console.log("Stop it with Ctrl-C; started again with the same folder, the day goes on.");
}

await reportFaults(start);
