let context: AudioContext | undefined;

const TIME_IS_UP = [660, 880]; // Hz, one after the other
const EACH = 0.18; // s

/** Short tones, Hz, where the page was touched before; a browser without sound stays silent. */
export function sound(tones: readonly number[] = TIME_IS_UP): void {
  if (typeof AudioContext === "undefined" || navigator.userActivation?.hasBeenActive !== true)
    return;
  context ??= new AudioContext();
  for (const [i, tone] of tones.entries()) {
    const from = context.currentTime + i * EACH;
    const [source, loudness] = [context.createOscillator(), context.createGain()];
    source.frequency.value = tone;
    loudness.gain.setValueAtTime(0.2, from);
    loudness.gain.exponentialRampToValueAtTime(0.001, from + EACH);
    source.connect(loudness).connect(context.destination);
    source.start(from);
    source.stop(from + EACH);
  }
}
