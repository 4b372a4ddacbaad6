import { driverRuns, exampleLog, formatLog, type LogEntry, standing } from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { useBrowser } from "./browser.js";
import { goTo, kept, takeIn } from "./workshop.js";

const { open } = useBrowser();

/** One more report on the fourth run of the example, on a place that nobody spoke of. */
function laterReport(): LogEntry {
  const [day] = standing(exampleLog, "event");
  const [first] = (day ? driverRuns(exampleLog, day) : [])
    .filter(({ run }) => run === 4)
    .flatMap(({ reports }) => reports);
  if (first === undefined) throw new Error("somebody reported on the fourth run of the example");
  const report = { ...first.report, corner: "Pit exit", balance: 0 };
  return { ...first, id: "later-1", at: "2031-05-10T23:00:00.000Z", report };
}

describe("a glance at another tab", () => {
  it("leaves what was worked out in Talk, and what it was worked out from, as it was", async () => {
    const { page, errors } = await open("workshop");
    await page.locator("#open-example").click();
    await goTo(page, "talk");
    await page.locator("#talk-run .chip", { hasText: /^4$/ }).click();
    await page.locator("#talk-4 > summary").click();
    await page.locator("#place-1").check();
    await page.locator("#pressure .chip", { hasText: "off at the rear" }).click();
    await page.locator("#work-out").click();
    await page.locator("#not-proposed > summary").click();
    const told = await page.locator("#diagnosis .proposals h4").allTextContents();
    expect(told.length).toBeGreaterThan(1);

    const isAsItWas = async () => {
      expect(await page.locator("#diagnosis .proposals h4").allTextContents()).toEqual(told);
      expect(await page.locator("#place-1").isChecked()).toBe(true);
      const chosen = page.locator("#pressure .chip", { has: page.locator("input:checked") });
      expect(await chosen.textContent()).toBe("off at the rear");
    };
    await goTo(page, "log");
    await goTo(page, "talk");
    await isAsItWas();
    expect(await page.locator("#not-proposed li").first().isVisible()).toBe(true);

    // Another run has a talk of its own
    await page.locator("#talk-run .chip", { hasText: /^3$/ }).click();
    expect(await page.locator("#diagnosis .proposals").count()).toBe(0);
    await page.locator("#talk-run .chip", { hasText: /^4$/ }).click();
    await isAsItWas();

    // What comes in later changes nothing under the reader's eyes, and is said
    expect(await page.locator("#diagnosis").textContent()).not.toContain("work it out again");
    await takeIn(page, "later.json", formatLog({ entries: [laterReport()] }));
    await goTo(page, "talk");
    await isAsItWas();
    expect(await page.locator("#diagnosis").textContent()).toContain("work it out again");
    expect(errors).toEqual([]);
  });

  it("leaves a note, a pasted text and a run that are half written as they were, and so does a reload", async () => {
    const { page, errors } = await open("workshop");
    await page.locator("#open-example").click();
    await goTo(page, "log");
    await page.locator("#log-note").fill("Rain from three o'clo");
    await page.locator("#pasted").fill('{"kind":"rollbook log",');
    await page.locator("#log-runs > summary").click();
    await page.locator("#edit-run-1").click();
    await page.locator("#run-conditions").fill("gusty");
    await page.locator("#run-laps").fill("81.4 80.2");
    const isAsItWas = async () => {
      expect(await page.locator("#log-note").inputValue()).toBe("Rain from three o'clo");
      expect(await page.locator("#pasted").inputValue()).toBe('{"kind":"rollbook log",');
      expect(await page.locator("#run-conditions").inputValue()).toBe("gusty");
      expect(await page.locator("#run-laps").inputValue()).toBe("81.4 80.2");
      expect(await page.locator("#run-laps").isVisible()).toBe(true);
    };
    await goTo(page, "plan");
    await goTo(page, "log");
    await isAsItWas();
    await page.reload();
    await page.locator("#log h2").waitFor();
    await isAsItWas();

    // A text that is refused is still there to be mended; what is filed leaves its field
    await page.locator("#take-pasted").click();
    await page.locator("#taken-in", { hasText: "not JSON" }).waitFor();
    await page.locator("#add-note").click();
    await page.locator("p.notice", { hasText: "The note is in the log" }).waitFor();
    expect(await page.locator("#log-note").inputValue()).toBe("");
    expect(await page.locator("#pasted").inputValue()).toBe('{"kind":"rollbook log",');
    await page.locator("#run-save").click();
    await page.locator("#log-runs tbody tr", { hasText: "gusty" }).waitFor();
    expect(await page.locator("#run-laps").count()).toBe(0);
    await kept(page);
    await page.reload();
    await page.locator("#log h2").waitFor();
    expect(await page.locator("#log-note").inputValue()).toBe("");
    expect(await page.locator("#run-laps").count()).toBe(0);
    expect(errors).toEqual([]);
  });
});
