import encodeQR from "qr";

/** Light modules around the code. – ISO/IEC 18004 asks for four */
const quiet = 4;

/** Characters that still make a code which a phone reads from a projector. */
export const longestLink = 600;

/** A QR code as the path of its dark modules, one unit each, with the side of the square. */
export function codeOf(text: string): { path: string; side: number } {
  const rows = encodeQR(text, "raw", { ecc: "medium", border: quiet });
  const runs = rows.flatMap((row, y) =>
    row.flatMap((dark, x) =>
      dark && !row[x - 1] ? [`M${x} ${y}h${runFrom(row, x)}v1H${x}z`] : [],
    ),
  );
  return { path: runs.join(""), side: rows.length };
}

function runFrom(row: readonly boolean[], start: number): number {
  const end = row.indexOf(false, start);
  return (end < 0 ? row.length : end) - start;
}
