import { describe, expect, it } from "vitest";
import { fileAllPredictions, useBrowser } from "./browser.js";
import { goToHash } from "./go-to-hash.js";

const { open, fileUrl } = useBrowser();
const chapter = "01-load-transfer";

/** What the number boxes of a figure show. */
const boxesOf = (page: Awaited<ReturnType<typeof open>>["page"], id: string) =>
  page
    .locator(`#${id} input[type=number]`)
    .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));

const openAt = async (hash: string) => {
  const watched = await open(fileUrl(chapter));
  await fileAllPredictions(watched.page);
  await goToHash(watched.page, hash);
  return watched;
};

describe("a link to a figure", () => {
  it("opens it with its sliders set, in view, and the others where they start", async () => {
    const { page, errors } = await openAt("turn-and-tip?lateralAcceleration=9.5");
    const boxes = await boxesOf(page, "turn-and-tip");
    expect(boxes[0]).toBe("9.5");
    expect(await page.locator("#turn-and-tip .says").textContent()).toContain("9.5");
    const fromTop = () =>
      page
        .locator("#turn-and-tip")
        .evaluate((figure) => Math.abs(figure.getBoundingClientRect().top));
    await expect.poll(fromTop).toBeLessThan(60);
    expect(errors).toEqual([]);
  });

  it("works on the first visit, and waits behind a prediction", async () => {
    const { page } = await open(`${fileUrl(chapter)}#bars-and-total?frontBar=480&rearBar=least`);
    expect(await page.locator("#bars-and-total[data-locked]").count()).toBe(1);
    await fileAllPredictions(page);
    expect(await boxesOf(page, "bars-and-total")).toEqual(["480", "0"]);
  });

  it("with a bad value says so in a sentence, as text, until a slider moves", async () => {
    const { page } = await openAt("turn-and-tip?lateralAcceleration=99&<img src=x>=1");
    const fault = page.locator("#turn-and-tip .controls > .fault");
    expect(await fault.textContent()).toMatch(/takes 0\.0 to 13\.0 m\/s², not 99\.0\./);
    expect(await fault.locator("img").count()).toBe(0);
    expect((await boxesOf(page, "turn-and-tip"))[0]).toBe("13.0");
    await page
      .locator("#turn-and-tip")
      .getByRole("button", { name: "one step less" })
      .first()
      .click();
    expect(await fault.isHidden()).toBe(true);
  });

  it("that went to another chapter leads there, and what was kept of an exercise went along", async () => {
    const { page, errors } = await open(fileUrl("00-start-here"));
    const solved = { ask: "How many laps?", times: [{ day: 20_000, isRight: true }] };
    await page.evaluate((kept) => {
      localStorage.setItem("rollbook:exercise:00-start-here:ex-laps", JSON.stringify(kept));
      location.hash = "there-and-back?gain=0.03";
    }, solved);
    await page.waitForURL(/09-your-workshop\.html#there-and-back\?gain=0\.03$/);
    await page.locator("#there-and-back[data-live]").waitFor();
    expect(await page.locator("#ex-laps .reply").textContent()).toMatch(/^Due again today/);
    expect(errors).toEqual([]);
  });

  it("to nothing that the page has leaves it as it is", async () => {
    const { page, errors } = await openAt("no-such-figure?frontBar=3");
    expect((await boxesOf(page, "turn-and-tip"))[0]).toBe("7.0");
    expect(errors).toEqual([]);
  });
});

describe("the button below a figure", () => {
  it("is there only once a slider has moved, and its link brings the sliders back", async () => {
    const { page } = await open(fileUrl(chapter));
    await fileAllPredictions(page);
    expect(await page.getByRole("button", { name: "Link to this state" }).count()).toBe(0);
    const figure = page.locator("#turn-and-tip");
    await figure.getByRole("button", { name: "one step more" }).first().click();
    const link = figure.getByRole("button", { name: "Link to this state" });
    await page.evaluate(() => {
      navigator.clipboard.writeText = async (text) => {
        document.documentElement.dataset.copied = text;
      };
    });
    await link.click();
    await figure.locator(".told", { hasText: /^Copied\./ }).waitFor();
    const copied = (await page.locator("html").getAttribute("data-copied")) ?? "";
    expect(copied).toMatch(/#turn-and-tip\?lateralAcceleration=7\.1$/);
    await figure.locator("button.reset").click();
    expect(await link.count()).toBe(0);
    await page.goto(copied);
    await expect.poll(async () => (await boxesOf(page, "turn-and-tip"))[0]).toBe("7.1");
  });

  it("puts the link into the address bar where nothing may be copied", async () => {
    const { page } = await open(chapter);
    await fileAllPredictions(page);
    const figure = page.locator("#turn-and-tip");
    await figure.getByRole("button", { name: "one step more" }).first().click();
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error("no"));
    });
    await figure.getByRole("button", { name: "Link to this state" }).click();
    await figure.locator(".told", { hasText: "address bar" }).waitFor();
    expect(page.url()).toMatch(/#turn-and-tip\?lateralAcceleration=7\.1$/);
  });
});
