/** A worker that finds a QR code in a picture: loaded only where the browser has no finder of its own. */
import decodeQR from "qr/decode.js";

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

const here = globalThis as unknown as {
  onmessage: (event: { readonly data: Picture }) => void;
  postMessage(text: string | undefined): void;
};

here.onmessage = ({ data }) => here.postMessage(textIn(data));

function textIn(picture: Picture): string | undefined {
  try {
    return decodeQR(picture);
  } catch {
    return undefined; // there is none in this picture, or it cannot be read
  }
}
