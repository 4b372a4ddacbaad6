import type { Page } from "playwright-core";

/**
 * Moves the sliders of a page to and fro.
 *
 * @param every - after how many moves a frame is waited for
 * @param pause - ms to wait besides, for what a page does once it is left alone
 * @returns what `data-drawn` and `data-frame` of the page's map said after each frame, where it has one
 */
export function moveSliders(
  page: Page,
  moves: number,
  every: number,
  pause = 0,
): Promise<{ drawn: string; milliseconds: number }[]> {
  return page.evaluate(
    async ([count, every, pause]) => {
      const sliders = [...document.querySelectorAll<HTMLInputElement>(".slider input[type=range]")];
      const seen: { drawn: string; milliseconds: number }[] = [];
      for (let i = 0; i < count; i += 1) {
        const slider = sliders[i % sliders.length];
        if (!slider) break;
        const part = Math.abs(((i / sliders.length) % 100) - 50) / 50;
        slider.value = String(
          Number(slider.min) + part * (Number(slider.max) - Number(slider.min)),
        );
        slider.dispatchEvent(new Event("input", { bubbles: true }));
        if (i % every !== 0) continue;
        await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        if (pause > 0) await new Promise((done) => setTimeout(done, pause));
        const { drawn, frame } = document.querySelector<HTMLElement>(".map")?.dataset ?? {};
        if (frame) seen.push({ drawn: drawn ?? "", milliseconds: Number(frame) });
      }
      return seen;
    },
    [moves, every, pause] as const,
  );
}

/** Opens every lock, so that all sliders move and all pictures show. */
export const unlock = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const controls of document.querySelectorAll<HTMLFieldSetElement>("fieldset.controls")) {
      controls.disabled = false;
      controls.closest("[data-locked]")?.removeAttribute("data-locked");
    }
  });

const movesInFrame = 20; // as a quick hand makes them on a busy machine

/** Bytes of the page's heap after the collector has been through it. */
async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  await session.detach();
  return usedSize;
}

/**
 * By how many bytes a page's heap grows over many slider moves, once a first round has warmed it up.
 */
export async function heapGrowth(page: Page, moves = 10_000): Promise<number> {
  await moveSliders(page, moves / 10, movesInFrame);
  const before = await heapOf(page);
  await moveSliders(page, moves, movesInFrame);
  return (await heapOf(page)) - before;
}
