import { describe, expect, it } from "vitest";
import { chapters, useBrowser } from "./browser.js";

const { open } = useBrowser();

describe("the policy of a page", () => {
  it("stops script, handler, style and picture that someone smuggled in", async () => {
    const { page } = await open(chapters[0] ?? "index");
    const stopped = await page.evaluate(async () => {
      const kinds: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => {
        kinds.push(effectiveDirective);
      });
      const script = document.createElement("script");
      script.textContent = "window.smuggled = true";
      const style = document.createElement("style");
      style.textContent = "body { color: red }";
      const far = document.createElement("script");
      far.src = "https://example.invalid/x.js";
      document.body.append(script, style, far);
      document.body.insertAdjacentHTML(
        "beforeend",
        '<img src="https://example.invalid/x.png"><button onclick="window.smuggled = true">x</button>',
      );
      document.body.querySelector<HTMLButtonElement>("button:last-of-type")?.click();
      await fetch("https://example.invalid/").catch(() => {});
      for (let waited = 0; kinds.length < 6 && waited < 100; waited += 1) {
        await new Promise((wait) => setTimeout(wait, 100));
      }
      return { kinds: [...new Set(kinds)].sort(), smuggled: "smuggled" in window };
    });
    expect(stopped.smuggled).toBe(false);
    expect(stopped.kinds).toEqual([
      "connect-src",
      "img-src",
      "script-src-attr",
      "script-src-elem",
      "style-src-elem",
    ]);
  });
});
