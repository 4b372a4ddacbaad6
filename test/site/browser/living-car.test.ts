import { carBalance, demoCar, drive, handlingCarOf, trim, USUAL_SPEED } from "@rollbook/lib";
import { expect, it } from "vitest";
import { useBrowser } from "./browser.js";
import { layOut } from "./laid-out.js";

const { open } = useBrowser();

/** Outside loads at the end of the turn, N: driven here, apart from the page, with finer steps. */
function endLoads(stiffness: number) {
  const own = handlingCarOf(demoCar);
  const turn = Math.min(7.5, 0.8 * carBalance(own, { speed: USUAL_SPEED }).lateralAcceleration);
  const steer = trim(own, { speed: 60 / 3.6 }, turn)?.steer ?? Number.NaN;
  const front = { ...own.front, rollStiffness: stiffness * own.front.rollStiffness };
  const moments = drive(
    { ...own, front },
    {
      ...{ speed: 60 / 3.6, duration: 2.4, step: 0.01 },
      steer: (time) => steer * Math.min(1, Math.max(0, (time - 0.1) / 0.2)),
    },
  );
  const load = moments.at(-1)?.load;
  return [load?.front.right ?? Number.NaN, load?.rear.right ?? Number.NaN];
}

const newtonsIn = (text: string | null) =>
  [...(text ?? "").matchAll(/(\d+)\sN/g)].map(([, digits]) => Number(digits));

it("the first page shows at once what a stiffer front does to the four loads, in numbers of the model", async () => {
  const { page, errors, foreign } = await open("index");
  await page.locator("#living-car[data-live]").waitFor();
  const says = page.locator("#living-car .says");
  const [front = 0, rear = 0] = newtonsIn(await says.textContent());
  const [wantedFront = 0, wantedRear = 0] = endLoads(1);
  expect(Math.abs(front - wantedFront)).toBeLessThan(2);
  expect(Math.abs(rear - wantedRear)).toBeLessThan(2);
  await page.locator("#living-car-stiffness-range").press("End");
  const [stiffFront = 0, , stiffRear = 0] = newtonsIn(await says.textContent());
  const [twiceFront = 0, twiceRear = 0] = endLoads(2);
  expect(Math.abs(stiffFront - twiceFront)).toBeLessThan(2);
  expect(Math.abs(stiffRear - twiceRear)).toBeLessThan(2);
  expect(await says.textContent()).toContain("the front gives up sooner");
  await page.locator("#living-car-stiffness-range").press("Home");
  expect(await says.textContent()).toContain("the rear gives up sooner");
  expect(errors).toEqual([]);
  expect(foreign).toEqual([]);
});

/** Runs in the page: a frame comes when the test sends one, with the time that it says; ms. */
function holdFrames(): void {
  let now = 0;
  let next: FrameRequestCallback | undefined;
  performance.now = () => now;
  window.requestAnimationFrame = (work) => {
    next = work;
    return 1;
  };
  window.cancelAnimationFrame = () => {
    next = undefined;
  };
  addEventListener("frame", (event) => {
    now = (event as CustomEvent<number>).detail;
    const work = next;
    next = undefined;
    work?.(now);
  });
}

it("plays to its end, pauses, and is taken by keys", async () => {
  const { page } = await open("index");
  const time = () => page.locator("#living-car-time-range").inputValue();
  const play = page.locator("#living-car .play");
  await page.evaluate(holdFrames);
  const frameAt = (now: number) =>
    page.evaluate((at) => dispatchEvent(new CustomEvent("frame", { detail: at })), now);
  await play.focus();
  await page.keyboard.press("Enter"); // from its end it begins anew
  expect(await play.textContent()).toBe("Pause");
  await frameAt(400);
  await page.keyboard.press("Enter");
  expect([await play.textContent(), await time()]).toEqual(["Play", "0.4"]);
  await page.keyboard.press("Enter");
  await frameAt(1900);
  expect([await play.textContent(), await time()]).toEqual(["Play", "1.8"]);
});

it("moves by itself for nobody who asked for less motion, and one switch stops it on every page", async () => {
  const calm = await open("index", { reducedMotion: "reduce" });
  const step = calm.page.locator("#living-car .play");
  expect(await step.textContent()).toBe("Next moment");
  await step.click();
  expect(await calm.page.locator("#living-car-time-range").inputValue()).toBe("0");
  await step.click();
  expect(await calm.page.locator("#living-car-time-range").inputValue()).toBe("0.3");

  const { page } = await open("index");
  await page.locator("#motion").click();
  expect(await page.locator("#living-car .play").textContent()).toBe("Next moment");
  await page.goto(page.url().replace(/[^/]*$/, "07-how-fast-the-load-arrives.html"));
  await page.locator("#load-arrives[data-live]").waitFor();
  expect(await page.locator("#load-arrives .play").textContent()).toBe("Next moment");
  expect(await page.locator("#motion").textContent()).toBe("Let things move");
});

it("is taken hold of: what is pulled stays under the finger, across as well as up, and its slider follows", async () => {
  const { page, errors } = await open("03-distribution-between-axles");
  await layOut(page);
  const pull = async (id: string, by: readonly [number, number]) => {
    const handle = page.locator(`#${id} .hold`);
    await handle.scrollIntoViewIfNeeded();
    const middle = async () => {
      const { x = 0, y = 0, width = 0, height = 0 } = (await handle.boundingBox()) ?? {};
      return [x + width / 2, y + height / 2] as const;
    };
    const [x, y] = await middle();
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + by[0], y + by[1], { steps: 3 });
    const slider = page.locator(`#${id} input[type=range]`);
    const start = await slider.getAttribute("value");
    await expect.poll(() => slider.inputValue()).not.toBe(start);
    await expect
      .poll(async () => Math.hypot(...apart(await middle(), [x + by[0], y + by[1]])))
      .toBeLessThan(6);
    await page.mouse.up();
    return slider.inputValue();
  };
  const apart = (a: readonly [number, number], b: readonly [number, number]) =>
    [a[0] - b[0], a[1] - b[1]] as const;
  expect(Number(await pull("two-springs", [-16, 0]))).toBeLessThan(3);
  expect(Number(await pull("one-spring", [0, -8]))).toBeGreaterThan(25);
  const ways = await page
    .locator(".hold")
    .evaluateAll((all) => all.map((one) => [one.dataset.way, getComputedStyle(one).touchAction]));
  for (const [way, free] of ways) expect(free).toBe(way === "up" ? "pan-x" : "pan-y");
  expect(await page.locator(".hold[tabindex]").count()).toBe(0); // the slider is the way of keys
  expect(errors).toEqual([]);
});

it("lights a part in the nearest picture while its word is pointed at, tapped or focused", async () => {
  const { page, errors } = await open("03-distribution-between-axles");
  const word = page.locator('#from-wheel-to-roll + p .part-word[data-part="springs"]').first();
  const picture = page.locator("#two-springs");
  const faded = (part: string) =>
    picture
      .locator(`[data-part="${part}"]`)
      .first()
      .evaluate((mark) => getComputedStyle(mark).opacity);
  await word.hover();
  expect(await picture.getAttribute("data-lit")).toBe("springs");
  expect(Number(await faded("springs"))).toBe(1);
  expect(Number(await faded("tyres"))).toBeLessThan(0.5);
  await page.locator("#from-wheel-to-roll").hover();
  expect(await picture.getAttribute("data-lit")).toBeNull();
  await word.click();
  expect(await picture.getAttribute("data-lit")).toBe("springs");
  const stops = page.locator(".part-word[tabindex]");
  const parts = await stops.evaluateAll((all) =>
    all.map((one) => (one as HTMLElement).dataset.part),
  );
  expect(parts.toSorted()).toEqual(["bar", "links", "springs", "tyres"]); // one of each
  await stops.first().focus();
  expect(await page.locator("[data-lit]").count()).toBe(1);
  expect(errors).toEqual([]);
});
