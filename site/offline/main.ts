/** The foot of every page says whether the course is there without network. Stands alone, and begins once the page is there. */
import { keepCourse } from "./keep-course.js";
import { Sign } from "./sign.js";
import { words } from "./words.js";

const isApple = /iPhone|iPad|iPod/.test(navigator.userAgent);
const sign = new Sign(isApple ? words.iphone : "");

/** A page can be installed only where it has an address; a manifest beside a file is refused. */
function offerInstall(): void {
  const link = document.createElement("link");
  link.rel = "manifest";
  link.href = "manifest.webmanifest";
  document.head.append(link);
}

function start(): void {
  offerInstall();
  if (navigator.serviceWorker) void keepCourse(navigator.serviceWorker, sign);
  else sign.say(words.cannot);
}

if (location.protocol === "file:") sign.say(words.fromFolder);
else addEventListener("load", start);
