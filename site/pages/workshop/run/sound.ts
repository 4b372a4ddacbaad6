let context: AudioContext | undefined;

const TONES = [660, 880]; // Hz, one after the other
const EACH = 0.18; // s

/** Two short tones, where the page was touched before; a browser without sound stays silent. */
export function sound(): void {
  if (typeof AudioContext === "undefined" || navigator.userActivation?.hasBeenActive !== true)
    return;
  context ??= new AudioContext();
  for (const [i, tone] of TONES.entries()) {
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
