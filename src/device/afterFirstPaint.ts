/** Long enough for what the first page itself still fetches, ms. */
const WAIT_MS = 1000

/** Calls back once the first page stands and the browser has time. */
export function afterFirstPaint(act: () => void): void {
  setTimeout(() => {
    // Not every browser says when it has time.
    if (typeof requestIdleCallback === 'function') requestIdleCallback(act, { timeout: 2 * WAIT_MS })
    else act()
  }, WAIT_MS)
}
