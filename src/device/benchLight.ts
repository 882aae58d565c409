/** How the screen is lit: as the device is set, or as the maker chose for this device. */
export const BENCH_LIGHTS = ['device', 'light', 'dark'] as const
export type BenchLight = (typeof BENCH_LIGHTS)[number]

const KEY = 'ribwright-bench-light'

/** What was chosen on this device; 'device' where nothing was, or where the browser keeps nothing. */
export function readBenchLight(): BenchLight {
  try {
    const stored = localStorage.getItem(KEY)
    return BENCH_LIGHTS.find((one) => one === stored) ?? 'device'
  } catch {
    return 'device'
  }
}

/** Lights the page so, and keeps the choice where it can be kept. */
export function setBenchLight(light: BenchLight): void {
  if (light === 'device') delete document.documentElement.dataset['bench']
  else document.documentElement.dataset['bench'] = light
  // What the device draws round an installed page is of the paper that is shown.
  for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[data-light]')) {
    const own = meta.dataset['light'] ?? ''
    meta.media = light === 'device' ? `(prefers-color-scheme: ${own})` : light === own ? 'all' : 'not all'
  }
  try {
    localStorage.setItem(KEY, light)
  } catch {
    // A browser that keeps nothing lights this visit only.
  }
}
