/** An address that only this device can open. */
export function isOnlyHere({ protocol, hostname }: URL): boolean {
  return protocol === "file:" || /^(localhost|127\.|\[::1\]|0\.0\.0\.0)/.test(hostname);
}

/** The folder of the course that a typed address means; nothing where it is none. */
export function courseAt(typed: string): URL | undefined {
  try {
    const url = new URL(typed.trim());
    if (!/^https?:$/.test(url.protocol)) return undefined;
    const folder = url.pathname.replace(/[^/]*\.html$/, "");
    return new URL(folder.endsWith("/") ? folder : `${folder}/`, url.origin);
  } catch {
    return undefined;
  }
}

/**
 * The part of a link that is inside the course, such as `02-tyres.html#why`.
 *
 * @returns nothing where the link leads out of the course
 */
export function viewIn(course: URL, link: string): string | undefined {
  try {
    const { href } = new URL(link.trim(), course);
    return href.startsWith(course.href) ? href.slice(course.href.length) : undefined;
  } catch {
    return undefined;
  }
}
