import { describe, expect, it } from "vitest";
import { courseAt, isOnlyHere, viewIn } from "../../../site/hand-over/course.js";

describe("the address of the course", () => {
  it("knows addresses that open on this device alone", () => {
    for (const only of [
      "file:///home/x/dist/",
      "http://localhost:4173/",
      "http://127.0.0.1/",
      "http://[::1]:80/",
    ]) {
      expect(isOnlyHere(new URL(only)), only).toBe(true);
    }
    expect(isOnlyHere(new URL("https://club.example/rollbook/"))).toBe(false);
  });

  it("is the folder of whatever page of the course was typed", () => {
    for (const typed of [
      "https://club.example/rb",
      "https://club.example/rb/",
      " https://club.example/rb/index.html?x#y",
    ]) {
      expect(courseAt(typed)?.href).toBe("https://club.example/rb/");
    }
  });

  it("is http or https, nothing else", () => {
    for (const typed of ["", "club", "javascript:alert(1)", "data:text/html,x", "file:///x/"]) {
      expect(courseAt(typed), typed).toBeUndefined();
    }
  });
});

describe("a link to share", () => {
  const course = new URL("https://club.example/rb/");

  it("keeps page, state and place inside the course", () => {
    const view = "01-load-transfer.html?a=1#bars?frontBar=480";
    expect(viewIn(course, view)).toBe(view);
    expect(viewIn(course, `https://club.example/rb/${view}`)).toBe(view);
  });

  it("is refused where it leads out of the course", () => {
    for (const link of [
      "https://evil.example/",
      "//evil.example/x",
      "../other/",
      "/x",
      "javascript:alert(1)",
      "https://club.example.evil/rb/",
    ]) {
      expect(viewIn(course, link), link).toBeUndefined();
    }
  });
});
