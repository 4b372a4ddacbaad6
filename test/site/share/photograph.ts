/** The path painted black on white, three pixels a module, as a camera would see it. */
export function photograph(path: string, side: number) {
  const scale = 3;
  const width = side * scale;
  const data = new Uint8Array(width * width * 4).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1) {
      const start = (row * width + Number(x) * scale) * 4;
      for (let at = start; at < start + Number(run) * scale * 4; at += 4) data.fill(0, at, at + 3);
    }
  }
  return { width, height: width, data };
}
