import type { Bounds } from '../drawing.ts'

/** A title smaller than this cannot be read. */
const LEAST_WIDTH_MM = 36
const LEAST_HEIGHT_MM = 12
const MARGIN_MM = 14

/** A stretch along a piece on which something stands already. */
export interface Taken {
  readonly fromMm: number
  readonly toMm: number
}

/**
 * The largest field of a piece on which nothing stands: between two neighbouring stretches that are taken, as high as the piece has room there
 * (`heightAt`, null where it has none). Null where no field would hold a title.
 */
export function widestRoom(
  taken: readonly Taken[],
  heightAt: (fromMm: number, toMm: number) => { readonly minY: number; readonly maxY: number } | null,
): Bounds | null {
  const inOrder = taken.toSorted((a, b) => a.fromMm - b.fromMm)
  let best: Bounds | null = null
  let reachedMm = inOrder[0]?.toMm ?? 0
  for (const { fromMm, toMm } of inOrder.slice(1)) {
    const [minX, maxX] = [reachedMm + MARGIN_MM, fromMm - MARGIN_MM]
    reachedMm = Math.max(reachedMm, toMm)
    if (maxX - minX < LEAST_WIDTH_MM) continue
    const height = heightAt(minX, maxX)
    if (height === null || height.maxY - height.minY < LEAST_HEIGHT_MM) continue
    const room = { minX, maxX, ...height }
    if (best === null || areaOf(room) > areaOf(best)) best = room
  }
  return best
}

const areaOf = ({ minX, minY, maxX, maxY }: Bounds): number => (maxX - minX) * (maxY - minY)
