import type { Bounds } from '../../drawing/drawing.ts'

/** What a sheet offers and how tiles share it. Lengths in mm of the page. */
export interface TileSheet {
  /** The page upright; of a roll, its width, and the longest piece that is cut off it. */
  readonly widthMm: number
  readonly heightMm: number
  /** A page no longer than it has to be, cut off a roll. */
  readonly isRoll: boolean
  readonly marginMm: number
  /** Kept free above the lower margin. */
  readonly footMm: number
  readonly overlapMm: number
  /** How much longer than true a millimetre of the plot is set. */
  readonly times: { readonly across: number; readonly along: number }
}

/** One sheet of those a plot is cut into; rows and columns count from 0 at the upper left. */
export interface Tile {
  readonly row: number
  readonly column: number
  /** The part of the plot it shows, in mm of the plot. */
  readonly window: Bounds
}

export interface Tiling {
  readonly pageWidthMm: number
  readonly pageHeightMm: number
  readonly rows: number
  readonly columns: number
  /** Row by row. Those no ink runs through are left out. */
  readonly tiles: readonly Tile[]
}

/** Rows or columns of windows along one direction. */
interface Windows {
  readonly count: number
  readonly windowMm: number
  readonly fromMm: number
  readonly stepMm: number
}

/** Where a box may lie among windows that together are larger, in parts of what is left over; its middle first. */
const PLACES = [0.5, 0.25, 0.75, 0, 1] as const

/**
 * The grid of sheets a box is cut into, upright or lying, whichever needs fewer sheets; upright where both need as many. Neighbours share
 * `overlapMm`, never more than a third of a window. A sheet counts only if ink runs through its own part of the box: half of what it
 * shares belongs to its neighbour, which shows it too. Where the grid is larger than the box it is moved over it so that fewest sheets and then
 * fewest cuts come out, `cutsOf` saying how many. Total: sizes too small for a window are taken as one of 1 mm.
 */
export function tiling(
  box: Bounds,
  sheet: TileSheet,
  hasInk: (part: Bounds) => boolean,
  cutsOf: (tiles: readonly Tile[]) => number = () => 0,
): Tiling {
  const upright = best(box, sheet, false, hasInk, cutsOf)
  const lying = best(box, sheet, true, hasInk, cutsOf)
  return lying.tiles.length < upright.tiles.length ? lying : upright
}

function best(
  box: Bounds,
  sheet: TileSheet,
  isLying: boolean,
  hasInk: (part: Bounds) => boolean,
  cutsOf: (tiles: readonly Tile[]) => number,
): Tiling {
  const middle = tilingOf(box, sheet, isLying, { across: 0.5, along: 0.5 }, hasInk)
  // One sheet shows all, wherever the box lies on it.
  if (middle.tiles.length <= 1) return middle
  let [chosen, cuts] = [middle, cutsOf(middle.tiles)]
  for (const across of middle.columns > 1 ? PLACES : [0.5])
    for (const along of middle.rows > 1 ? PLACES : [0.5]) {
      const other = tilingOf(box, sheet, isLying, { across, along }, hasInk)
      const more = other.tiles.length - chosen.tiles.length
      if (more > 0) continue
      const otherCuts = cutsOf(other.tiles)
      if (more < 0 || otherCuts < cuts) [chosen, cuts] = [other, otherCuts]
    }
  return chosen
}

function tilingOf(
  box: Bounds,
  sheet: TileSheet,
  isLying: boolean,
  place: { readonly across: number; readonly along: number },
  hasInk: (part: Bounds) => boolean,
): Tiling {
  const { marginMm, footMm, isRoll, times, overlapMm } = sheet
  const [mostWidthMm, mostHeightMm] = isLying ? [sheet.heightMm, sheet.widthMm] : [sheet.widthMm, sheet.heightMm]
  const sharedX = overlapMm / times.across
  const sharedY = overlapMm / times.along
  const roomX = (mostWidthMm - 2 * marginMm) / times.across
  const roomY = (mostHeightMm - 2 * marginMm - footMm) / times.along
  // What is cut off a roll is no longer than it has to be.
  const windowX = isRoll && isLying ? shortened(box.maxX - box.minX, roomX, sharedX, least(sheet, false)) : roomX
  const windowY = isRoll && !isLying ? shortened(box.maxY - box.minY, roomY, sharedY, least(sheet, true)) : roomY
  const cutX = windows(box.minX, box.maxX, windowX, sharedX, place.across)
  const cutY = windows(box.minY, box.maxY, windowY, sharedY, place.along)
  const tiles: Tile[] = []
  for (let row = 0; row < cutY.count; row++)
    for (let column = 0; column < cutX.count; column++) {
      const [x, y] = [span(cutX, column), span(cutY, row)]
      const own = { minX: x.ownFromMm, maxX: x.ownToMm, minY: y.ownFromMm, maxY: y.ownToMm }
      if (hasInk(own))
        tiles.push({ row, column, window: { minX: x.fromMm, maxX: x.toMm, minY: y.fromMm, maxY: y.toMm } })
    }
  return {
    pageWidthMm: windowX === roomX ? mostWidthMm : cutX.windowMm * times.across + 2 * marginMm,
    pageHeightMm: windowY === roomY ? mostHeightMm : cutY.windowMm * times.along + 2 * marginMm + footMm,
    rows: cutY.count,
    columns: cutX.count,
    tiles,
  }
}

/** A length cut off a roll is no shorter than this, so that what stands at its foot and along its edge has room. */
const LEAST_CUT_MM = 210

const least = ({ marginMm, footMm, times }: TileSheet, isAlong: boolean): number =>
  isAlong ? (LEAST_CUT_MM - 2 * marginMm - footMm) / times.along : (LEAST_CUT_MM - 2 * marginMm) / times.across

function windows(fromMm: number, toMm: number, roomMm: number, overlapMm: number, place: number): Windows {
  const windowMm = Math.max(roomMm, 1)
  const sharedMm = sharedOf(windowMm, overlapMm)
  const stepMm = windowMm - sharedMm
  const count = countOf(toMm - fromMm, windowMm, sharedMm)
  const spareMm = count * stepMm + sharedMm - (toMm - fromMm)
  return { count, windowMm, stepMm, fromMm: fromMm - spareMm * place }
}

const sharedOf = (windowMm: number, overlapMm: number): number => Math.min(Math.max(overlapMm, 0), windowMm / 3)

/** A box that fits to the last digit needs no further window. */
const countOf = (lengthMm: number, windowMm: number, sharedMm: number): number =>
  Math.max(Math.ceil((lengthMm - sharedMm) / (windowMm - sharedMm) - 1e-9), 1)

/** As long as a window has to be where there are as many as with the longest. */
function shortened(lengthMm: number, mostMm: number, overlapMm: number, leastMm: number): number {
  const sharedMm = sharedOf(mostMm, overlapMm)
  const count = countOf(lengthMm, mostMm, sharedMm)
  const neededMm = (lengthMm + (count - 1) * sharedMm) / count
  return Math.min(Math.max(neededMm, leastMm, 3 * sharedMm), mostMm)
}

/** Where one window lies, and the part of it that is its own: the middle of what it shares with a neighbour is the border. */
function span({ count, windowMm, stepMm, fromMm }: Windows, i: number) {
  const start = fromMm + i * stepMm
  const half = (windowMm - stepMm) / 2
  return {
    fromMm: start,
    toMm: start + windowMm,
    ownFromMm: i === 0 ? start : start + half,
    ownToMm: i === count - 1 ? start + windowMm : start + windowMm - half,
  }
}
