/** What the foot of a page says about use without network. */
export const words = {
  fromFolder: "Opened from a folder: nothing here needs the network.",
  cannot: "This browser does not keep the course for use without network.",
  gettingReady: "Getting ready for use without network …",
  ready: "Ready without network.",
  notReady: (reason: string) => `Not yet ready without network: ${reason}`,
  noRoom: "this device has no room left for it.",
  notAll: "not all of it arrived; it tries again at the next page.",
  newer: "A newer course is there.",
  show: "Show it",
  renewed: "The course was renewed in another window; reload this page to see it.",
  ofAnother:
    '<!doctype html><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Of a newer course</title><p>This device keeps an older course, and the host has this page only of a newer one. <a href="index.html">Open the contents</a>: once the newer course has arrived, the foot of the page offers to show it.</p>',
  iphone:
    "On iPhone and iPad, pages not opened for a week may be cleared: put the course on the Home Screen, and save what you filed as a file.",
} as const;
