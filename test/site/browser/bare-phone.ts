import {
  type LogEntry,
  lastQuestion,
  mergeLogs,
  type PollLetter,
  type Report,
  sameName,
  standing,
} from "@rollbook/lib";
import { listen, post } from "../paddock/process.js";

/** A driver's phone without a screen: it joins, hears and files over the network as the page does. */
export class BarePhone {
  readonly name: string;
  readonly #address: string;
  readonly #token: string;
  #count = 0;

  private constructor(address: string, name: string, token: string) {
    this.#address = address;
    this.name = name;
    this.#token = token;
  }

  static async join(address: string, code: string, name: string): Promise<BarePhone> {
    const { fields } = await post(address, "join", "", { code, name });
    return new BarePhone(address, name, String(fields.token));
  }

  /** The day as far as this phone is told of it. */
  async #log() {
    const stream = await listen(this.#address, this.#token);
    await stream.until(({ event }) => event === "caught-up");
    stream.stop();
    return mergeLogs({ entries: stream.entries() });
  }

  /** Files what it felt in a run that the desk has begun. */
  async report(number: number, report: Report): Promise<void> {
    const run = standing(await this.#log(), "run").find(
      ({ driver, runNumber }) => runNumber === number && sameName(driver, this.name),
    );
    if (run === undefined) throw new Error(`${this.name} has no run ${number}`);
    await this.#file({ ...this.#head(), kind: "report", run: run.id, report });
  }

  async vote(letter: PollLetter): Promise<void> {
    const asked = lastQuestion(await this.#log());
    if (asked === undefined) throw new Error("nothing is asked");
    await this.#file({
      ...this.#head(),
      ...{ kind: "vote", question: asked.id, letter, by: this.name },
    });
  }

  #head() {
    this.#count += 1;
    const device = `${this.name.toLowerCase()}aaaaaaaa`.slice(0, 8);
    return { id: `${device}-${this.#count}`, at: new Date().toISOString(), author: this.name };
  }

  async #file(entry: LogEntry): Promise<void> {
    const { status, fields } = await post(this.#address, "entries", this.#token, {
      entries: [entry],
    });
    if (status !== 200 || !(fields.filed as string[]).includes(entry.id))
      throw new Error(`not filed: ${status} ${JSON.stringify(fields)}`);
  }
}
