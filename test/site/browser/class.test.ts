import { describe, expect, it } from "vitest";
import {
  type CarClass,
  carInClass,
  exampleLog,
  formatClass,
  formatLog,
} from "../../../lib/index.js";
import { codeEndsOf } from "../../../site/hand-over/file-links.js";
import { pack } from "../../../site/hand-over/packed.js";
import { axeFaultsInBoth } from "./axe.js";
import { useBrowser } from "./browser.js";
import { goTo, takeIn } from "./workshop.js";

const { open } = useBrowser();

const club: CarClass = {
  name: "Winter rules",
  rules: [
    { kind: "rideHeight", name: "4.1", least: 0.134 },
    { kind: "fixed", name: "4.3", levers: ["brakeFrontShare"] },
  ],
  briefing: "Helmets on before the engine starts.",
};
const phone = { viewport: { width: 360, height: 740 } };
const spaced = (text: string | null) => (text ?? "").replaceAll("\u00a0", " ");

describe("a class on a phone", () => {
  it("is opened as a file, and the car page names each rule and by how much it is broken", async () => {
    const { page, errors } = await open("your-car", { silentWorkers: true, bypassCSP: true });
    await page.setViewportSize(phone.viewport);
    const buffer = Buffer.from(formatClass(club));
    const file = { name: "winter.json", mimeType: "application/json", buffer };
    await page.locator("#files").setInputFiles(file);
    const against = page.locator(".against", { hasText: "Pipit" });
    await against.waitFor();
    expect(spaced(await against.textContent())).toContain(
      "rule 4.1, ride height at least 134 mm: broken by 4.0 mm (front left)", // 130 mm in its file
    );
    await page.getByRole("button", { name: "Start from a copy" }).click();
    const limits = page.locator("aside.summary .limits li", { hasText: "Rule 4.1" });
    await limits.first().waitFor();
    expect(spaced(await limits.first().textContent())).toContain("outside by 4 mm");
    expect(await page.locator("aside.summary").textContent()).toContain(
      "Rule 4.3: front brake share may not be moved.",
    );
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(await axeFaultsInBoth(page)).toEqual([]);
    expect(errors).toEqual([]);
  });

  it("comes together from codes that are opened one after the other, and is asked about", async () => {
    const letters = await pack(formatClass(club));
    const ends = codeEndsOf(letters, 150);
    expect(ends.length).toBeGreaterThan(1);
    const { page } = await open("your-car", { silentWorkers: true });
    for (const end of ends.toReversed())
      await page
        .evaluate((hash) => {
          location.hash = hash;
        }, end)
        .then(() => page.locator(".offer").waitFor());
    await page.locator("#take-brought").click();
    await page.locator(".classes", { hasText: "Winter rules" }).waitFor();
    expect(page.url()).not.toContain("take");
  });

  it("keeps a diagnosis from what it forbids, with the rule", async () => {
    const entries = exampleLog.entries.map((entry) =>
      entry.kind === "set-up" ? { ...entry, car: carInClass(entry.car, club) } : entry,
    );
    const { page } = await open("workshop", { silentWorkers: true });
    await takeIn(page, "day.json", formatLog({ entries }));
    await goTo(page, "plan");
    await page.locator("#other-day").selectOption({ index: 1 });
    await goTo(page, "talk");
    await page.locator("#talk-run .chip", { hasText: /^4$/ }).click();
    await page.locator("#talk-4 > summary").click();
    await page.locator("#place-1").check();
    await page.locator("#pressure .chip", { hasText: "off at the rear" }).click();
    await page.locator("#work-out").click();
    const others = page.locator("#diagnosis #not-proposed");
    await others.waitFor({ state: "attached" });
    expect(spaced(await others.textContent())).toContain(
      "Rule 4.3 of the class does not allow it to be moved.",
    );
    const proposed = await page.locator("#diagnosis .proposals h4").allTextContents();
    for (const name of proposed) expect(name).not.toContain("brake share");
  });

  it("is named by a plan that breaks it until that is kept, stands on the briefing, and in Practice", async () => {
    const { page, errors } = await open("your-car", { silentWorkers: true });
    const buffer = Buffer.from(formatClass(club));
    const file = { name: "winter.json", mimeType: "application/json", buffer };
    await page.locator("#files").setInputFiles(file);
    await page.locator(".against").first().waitFor();
    const at = (name: string) => page.url().replace(/your-car\.html.*/, `${name}.html`);
    const [workshop, practice] = [at("workshop"), at("practice")];
    await page.goto(workshop);
    await goTo(page, "plan");
    await page.locator("#new-day").click();
    await page.locator("#step-add").click();
    await page.locator("#step-0-kind").selectOption("baseline");
    await page.locator("#step-add").click();
    await page.locator("#step-1-kind").selectOption("change");
    const open_ = page.locator("#outside-class");
    await open_.waitFor();
    expect(await open_.textContent()).toContain("Run 2 breaks the class");
    await page.locator("#step-1-outside").click();
    await open_.waitFor({ state: "detached" });
    const beware = page.locator("#step-1-outcome .beware", { hasText: "rule 4.1" }).first();
    await expect.poll(() => beware.textContent()).toContain("which the organiser keeps knowingly");
    await goTo(page, "sheets");
    await page.locator("#sheets").getByLabel("Briefing", { exact: true }).check();
    await page
      .locator("#sheets .paper", { hasText: "Helmets on before the engine starts." })
      .first()
      .waitFor();
    await page.goto(practice);
    await page.locator("#choose").getByText("Not offered: rule 4.3").waitFor({ state: "attached" });
    expect(errors).toEqual([]);
  });
});
