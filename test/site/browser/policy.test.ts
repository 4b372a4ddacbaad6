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
      const style = document.createElement("style");
      style.textContent = "body { color: red }";
      const picture = new Image();
      picture.src = "https://example.invalid/x.png";
      document.body.append(style, picture);
      await fetch("https://example.invalid/").catch(() => {});
      const refused = ["script", "address", "handler", "html", "worker", "frame"].filter((way) => {
        const [script, button] = [
          document.createElement("script"),
          document.createElement("button"),
        ];
        try {
          if (way === "script") script.textContent = "window.smuggled = true";
          if (way === "address") script.src = "https://example.invalid/x.js";
          if (way === "handler") button.setAttribute("onclick", "window.smuggled = true");
          if (way === "html") button.innerHTML = "<b onclick='window.smuggled = true'>x</b>";
          if (way === "worker") new Worker("course.js");
          if (way === "frame") document.createElement("iframe").srcdoc = "<script></script>";
          document.body.append(script, button);
          button.click();
          return false;
        } catch (error) {
          return error instanceof TypeError;
        }
      });
      for (let waited = 0; kinds.length < 9 && waited < 100; waited += 1) {
        await new Promise((wait) => setTimeout(wait, 100));
      }
      return { kinds: [...new Set(kinds)].sort(), refused, smuggled: "smuggled" in window };
    });
    expect(stopped.smuggled).toBe(false);
    expect(stopped.refused).toEqual(expect.arrayContaining(["address", "html", "worker", "frame"]));
    expect(stopped.kinds).toEqual(
      expect.arrayContaining([
        "connect-src",
        "img-src",
        "require-trusted-types-for",
        "style-src-elem",
      ]),
    );
  });
});
