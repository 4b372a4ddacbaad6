import { describe, expect, it } from "vitest";
import { clubTyreCoefficients as club, sideForce61 } from "../../../lib/index.js";
import { axeFaultsInBoth } from "./axe.js";
import { useBrowser } from "./browser.js";

const { open } = useBrowser();

const truth = { ...club, PDY1: 1.32, PDY2: -0.21 };
const forces = [1500, 3000, 4500]
  .flatMap((load) =>
    [1, 2, 4, 6, 9].map((angle) => {
      const force = sideForce61(truth, (angle * Math.PI) / 180, load, club.NOMPRES, 0);
      return `${load}\t${angle}\t${force.toFixed(1)}`;
    }),
  )
  .join("\n");
const spaced = (text: string | null) => (text ?? "").replaceAll("\u00a0", " ");

describe("a tyre that was measured", () => {
  it("is fitted to pasted side forces, drawn, and put on the car, whose figures follow it", async () => {
    const { page, errors } = await open("your-car", { silentWorkers: true, bypassCSP: true });
    await page.setViewportSize({ width: 360, height: 740 });
    await page.getByRole("button", { name: "Start from a copy" }).click();
    const balance = page.locator("aside.summary dl.pairs").nth(2);
    await balance.waitFor();
    const before = await balance.textContent();
    await page.locator("#head-wheels").click();
    await page.locator("#tyre-tool > summary").click();
    await page.locator("#tyre-pasted").fill("1500 2");
    await page.locator("#tyre-forces").click();
    const found = page.locator("#tyre-found");
    await found.getByText("Line 1 is").waitFor();
    await page.locator("#tyre-pasted").fill(forces);
    await page.locator("#tyre-forces").click();
    await found.locator(".residuals svg").first().waitFor();
    expect(spaced(await found.textContent())).toMatch(/under 3000 N1\.320 ± 0\.000/);
    expect(await found.locator(".residuals > svg path").count()).toBe(15);
    await page.locator("#tyre-on-both").click();
    await expect.poll(() => balance.textContent()).not.toBe(before);
    expect(await page.locator("#at-front-tyre-name").inputValue()).toBe("own");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(await axeFaultsInBoth(page)).toEqual([]);
    expect(errors).toEqual([]);
  });
});
