/** What the page that shares says of itself. */
export const words = {
  title: "Share",
  description:
    "Show a link to a page, a figure or a setting as a QR code, for the projector or on paper",
  opening:
    "Shows a link as a QR code, so that everyone in the room opens the same figure on their own phone.",
  needs:
    "Drawing the code needs JavaScript. Without it, copy the address from your browser’s address bar.",
  link: "Link",
  help: "Comes from the page you were on. To share a figure as it stands, use Link to this state below it.",
  address: "Where others find the course",
  addressHelp:
    "This course is open from this device alone, so its own address leads nobody else to it. Type the address of its public copy, such as https://club.example/rollbook/. It is kept on this device.",
  codeOf: (link: string) => `QR code of ${link}`,
  copy: "Copy the link",
  copied: "Copied.",
  notCopied: "The browser did not allow it; mark the link and copy it by hand.",
  large: "Fill the screen",
  print: "Print",
  back: "Back to the page",
  leadsAway: "This link leads out of the course, so it gets no code here.",
  tooLong: "This link is too long for a code that phones can read.",
  noAddress: "Type the address first.",
  badAddress: "An address opens with https:// or http://.",
} as const;
