const LENGTH = 400; // ms

/** Shakes the device for a moment, where it can, was touched before, and nobody asked for less motion. */
export function buzz(): void {
  const { userActivation } = navigator;
  if (!("vibrate" in navigator) || userActivation?.hasBeenActive !== true) return;
  if (!matchMedia("(prefers-reduced-motion: reduce)").matches) navigator.vibrate(LENGTH);
}
