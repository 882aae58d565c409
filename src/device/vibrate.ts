/** Shakes the device twice, where it can and the page has been touched; nothing elsewhere. */
export function vibrate(): void {
  if (typeof navigator.vibrate === 'function' && (navigator.userActivation?.hasBeenActive ?? true))
    navigator.vibrate([200, 120, 200])
}
