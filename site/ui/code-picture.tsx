import { codeOf } from "../hand-over/code.js";

/** A link as a QR code, black on white in any light. */
export function CodePicture({ link, label }: { readonly link: string; readonly label: string }) {
  const { path, side } = codeOf(link);
  return (
    <svg viewBox={`0 0 ${side} ${side}`} role="img" aria-label={label} shape-rendering="crispEdges">
      <rect width="100%" height="100%" fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
