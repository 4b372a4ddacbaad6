/** The address of the page that shows a view of the course, such as `02-tyres.html#why`, as a code. */
export const shareAddress = (view: string): string => `share.html#${encodeURIComponent(view)}`;

export const pageFile = (): string => location.pathname.split("/").at(-1) || "index.html";

const anchors = "main h2[id], main h3[id], main dt[id], main figure[id]";

function isInView(hash: string): boolean {
  const id = hash.slice(1).replace(/\?.*$/s, ""); // ids are plain
  const box = document.getElementById(id)?.getBoundingClientRect();
  return box !== undefined && box.bottom > 0 && box.top < innerHeight;
}

/** The anchor of the last heading or figure that begins in the upper half of the window, or above it. */
function nearestAnchor(): string {
  const passed = [...document.querySelectorAll(anchors)].filter(
    (place) => place.getBoundingClientRect().top < innerHeight / 2,
  );
  const id = scrollY > 0 ? passed.at(-1)?.id : undefined;
  return id ? `#${id}` : "";
}

/** What is before the reader: this page, at the place the address names or the one scrolled to. */
function presentView(): string {
  const { search, hash } = location;
  return pageFile() + search + (isInView(hash) ? hash : nearestAnchor());
}

const shareLink = (): HTMLAnchorElement | null => document.querySelector('a[href^="share.html"]');

/** Whether this page is one of a course that can share; a page on its own is not. */
export const canShare = (): boolean => shareLink() !== null;

/** Lets the page's link to sharing share what is before the reader. */
export function shareFromHere(): void {
  const link = shareLink();
  link?.addEventListener("click", () => {
    link.href = shareAddress(presentView());
  });
}
