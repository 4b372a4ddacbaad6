import type { SetUpMap } from "@rollbook/lib";
import type { Frame } from "../contours.js";

type Colour = readonly [number, number, number];

interface Colours {
  readonly neutral: Colour;
  readonly under: Colour;
  readonly over: Colour;
}

function colourOf(style: CSSStyleDeclaration, name: string): Colour {
  const hex = /^#(..)(..)(..)/.exec(style.getPropertyValue(name).trim());
  const part = (text = "80") => Number.parseInt(text, 16);
  return [part(hex?.[1]), part(hex?.[2]), part(hex?.[3])];
}

/** The two colours of balance and the one between, as the style sheet has them now. */
function coloursNow(node: Element): Colours {
  const style = getComputedStyle(node);
  return {
    neutral: colourOf(style, "--neutral"),
    under: colourOf(style, "--under"),
    over: colourOf(style, "--over"),
  };
}

/** The ground of a map: balance as colour, from one place smoothly to the next. */
export function ground(canvas: HTMLCanvasElement) {
  const small = document.createElement("canvas");
  let image: ImageData | undefined;
  let colours: Colours | undefined;
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    colours = undefined;
  });

  return function paint(map: SetUpMap, deepest: number, frame: Frame): void {
    const { columns, rows, understeerMargin } = map;
    const [inside, shown] = [small.getContext("2d"), canvas.getContext("2d")];
    if (!inside || !shown) return;
    colours ??= coloursNow(canvas);
    if (image?.width !== columns || image.height !== rows) {
      [small.width, small.height] = [columns, rows];
      image = inside.createImageData(columns, rows);
    }
    fill(image.data, map, deepest, colours);
    inside.putImageData(image, 0, 0);
    place(canvas, frame);
    shown.drawImage(small, 0.5, 0.5, columns - 1, rows - 1, 0, 0, canvas.width, canvas.height);
    canvas.dataset.places = String(understeerMargin.length);
  };
}

/** One pixel a place, the first row of the map at the bottom. */
function fill(
  pixels: Uint8ClampedArray,
  { columns, rows, understeerMargin }: SetUpMap,
  deepest: number,
  { neutral, under, over }: Colours,
): void {
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const part = (understeerMargin[row * columns + column] ?? 0) / deepest;
      const side = part < 0 ? over : under;
      const depth = Math.min(1, Math.abs(part));
      const at = ((rows - 1 - row) * columns + column) * 4;
      for (let c = 0; c < 3; c++) {
        const ground = neutral[c] ?? 0;
        pixels[at + c] = ground + ((side[c] ?? 0) - ground) * depth;
      }
      pixels[at + 3] = 255;
    }
  }
}

function place(canvas: HTMLCanvasElement, { left, top, width, height }: Frame): void {
  const [w, h] = [Math.round(width), Math.round(height)];
  if (canvas.width !== w) canvas.width = w;
  if (canvas.height !== h) canvas.height = h;
  Object.assign(canvas.style, {
    left: `${left}px`,
    top: `${top}px`,
    width: `${width}px`,
    height: `${height}px`,
  });
}
