/** What a shop's own boxes were heard to sound, as parts of the same boxes with rigid walls. */
export interface ShopRatio {
  readonly mean: number
  readonly least: number
  readonly greatest: number
  readonly count: number
}

/** So many boxes of one family it takes before a shop's own tell where the next one sounds. Common practice, no published source. */
export const ENOUGH_BOXES = 3

/** Whether the boxes a shop has heard are enough to go by; before that, only the band that holds for every shop does. */
export const tellsNext = (shop: ShopRatio | null): shop is ShopRatio => shop !== null && shop.count >= ENOUGH_BOXES

/**
 * Mean and range of the ratios heard over rigid of a shop's finished boxes; null before the first. What is no ratio, not finite or not
 * above 0, is passed over. The same instrument has the same numbers in every shop, so this stands beside them. Source: derived.
 */
export function shopRatio(ratios: readonly number[]): ShopRatio | null {
  const heard = ratios.filter((ratio) => Number.isFinite(ratio) && ratio > 0)
  if (heard.length === 0) return null
  return {
    mean: heard.reduce((sum, ratio) => sum + ratio / heard.length, 0),
    least: heard.reduce((a, b) => Math.min(a, b)),
    greatest: heard.reduce((a, b) => Math.max(a, b)),
    count: heard.length,
  }
}

/** Where a box of this shop is to be expected, Hz: as its boxes sounded on the mean, at the least and at the most. An estimate. */
export const expectedHz = (rigidHz: number, { mean, least, greatest }: ShopRatio) => ({
  meanHz: rigidHz * mean,
  leastHz: rigidHz * least,
  greatestHz: rigidHz * greatest,
})
