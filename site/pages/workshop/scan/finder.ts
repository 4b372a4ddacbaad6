import { ownWorker } from "@rollbook/page";

/** Finds the texts of codes in what a camera shows. */
export type Finder = (video: HTMLVideoElement) => Promise<readonly string[]>;

/** Browsers' own finder, where they have one. – Shape Detection API, draft community group report */
interface Detector {
  detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
interface Detectors {
  new (options: { formats: readonly string[] }): Detector;
  getSupportedFormats?(): Promise<readonly string[]>;
}

/** The browser's finder, or else the course's own, which is loaded now; and what lets it go. */
export async function findingCodes(): Promise<{ find: Finder; stop: () => void }> {
  const { BarcodeDetector } = globalThis as { BarcodeDetector?: Detectors };
  const formats = (await BarcodeDetector?.getSupportedFormats?.().catch(() => [])) ?? [];
  if (BarcodeDetector === undefined || !formats.includes("qr_code")) return ownFinder();
  const detector = new BarcodeDetector({ formats: ["qr_code"] });
  const find: Finder = async (video) =>
    (await detector.detect(video)).map(({ rawValue }) => rawValue);
  return { find, stop: () => {} };
}

const WIDEST = 960; // px: enough for the largest code that is shown, and quick on a phone

function ownFinder(): { find: Finder; stop: () => void } {
  const worker = ownWorker("decoder.js");
  const canvas = document.createElement("canvas");
  const find: Finder = (video) => {
    const scale = Math.min(1, WIDEST / Math.max(1, video.videoWidth));
    canvas.width = Math.round(video.videoWidth * scale);
    canvas.height = Math.round(video.videoHeight * scale);
    const context = canvas.getContext("2d", { willReadFrequently: true });
    if (context === null || canvas.width === 0) return Promise.resolve([]);
    context.drawImage(video, 0, 0, canvas.width, canvas.height);
    const { width, height, data } = context.getImageData(0, 0, canvas.width, canvas.height);
    return new Promise((resolve) => {
      worker.onmessage = ({ data: text }) => resolve(typeof text === "string" ? [text] : []);
      worker.onerror = () => resolve([]);
      worker.postMessage({ width, height, data }, [data.buffer]);
    });
  };
  return { find, stop: () => worker.terminate() };
}
