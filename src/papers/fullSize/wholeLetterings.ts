import { around, overlap } from '../../drawing/bounds.ts'
import type { Bounds } from '../../drawing/drawing.ts'
import type { Lettering } from '../../drawing/plot.ts'
import type { Ink } from './ink.ts'
import type { Tile } from './tiling.ts'

/** Lines of text that belong under one another, or one alone. */
interface Group {
  readonly letterings: readonly Lettering[]
  readonly bounds: Bounds
}

/** Lines about one middle and no further apart than this many sizes are one text. */
const APART = 2

/**
 * The letterings of each tile, so that none is cut where it can be helped. A text that stands whole on a tile is left off those that would
 * cut it. One that stands whole on none is moved onto the nearest tile, by half its size at most and clear of the others; where that cannot
 * be, every tile shows its part.
 */
export function wholeLetterings(ink: Ink, tiles: readonly Tile[]): ReadonlyMap<Tile, readonly Lettering[]> {
  const kept = new Map<Tile, Lettering[]>(tiles.map((tile) => [tile, []]))
  const groups = groupsOf(ink)
  for (const group of groups) {
    const shown = tiles.some(({ window }) => isInside(group.bounds, window)) ? group : movedWhole(group, tiles, groups)
    const whole = tiles.filter(({ window }) => isInside(shown.bounds, window))
    const on = whole.length > 0 ? whole : tiles.filter(({ window }) => overlap(shown.bounds, window))
    for (const tile of on) kept.get(tile)!.push(...shown.letterings)
  }
  return kept
}

/** How many texts stand whole on none of the tiles. */
export function textsCut(ink: Ink): (tiles: readonly Tile[]) => number {
  const groups = groupsOf(ink)
  return (tiles) => groups.filter(({ bounds }) => !tiles.some(({ window }) => isInside(bounds, window))).length
}

function groupsOf({ letterings }: Ink): Group[] {
  const groups: Group[] = []
  for (const { lettering, bounds } of letterings) {
    const last = groups.at(-1)
    if (last !== undefined && runsOn(last.letterings.at(-1)!, lettering))
      groups[groups.length - 1] = {
        letterings: [...last.letterings, lettering],
        bounds: around(last.bounds, bounds),
      }
    else groups.push({ letterings: [lettering], bounds })
  }
  return groups
}

function runsOn(a: Lettering, b: Lettering): boolean {
  if (a.turnDeg !== b.turnDeg) return false
  const [aside, down] = a.turnDeg === 0 ? [b.at.x - a.at.x, b.at.y - a.at.y] : [b.at.y - a.at.y, b.at.x - a.at.x]
  return Math.abs(aside) < 1e-6 && down > 0 && down <= APART * Math.max(a.sizeMm, b.sizeMm)
}

const isInside = (inner: Bounds, outer: Bounds): boolean =>
  inner.minX >= outer.minX && inner.maxX <= outer.maxX && inner.minY >= outer.minY && inner.maxY <= outer.maxY

function movedWhole(group: Group, tiles: readonly Tile[], groups: readonly Group[]): Group {
  const { minX, minY, maxX, maxY } = group.bounds
  const moves = tiles
    .map(({ window }) => ({
      x: inward(minX, maxX, window.minX, window.maxX),
      y: inward(minY, maxY, window.minY, window.maxY),
    }))
    .filter(({ x, y }) => Math.abs(x) <= (maxX - minX) / 2 + 1e-3 && Math.abs(y) <= (maxY - minY) / 2 + 1e-3)
    .toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y))
  for (const { x, y } of moves) {
    const bounds = { minX: minX + x, minY: minY + y, maxX: maxX + x, maxY: maxY + y }
    const isWhole = tiles.some(({ window }) => isInside(bounds, window))
    if (!isWhole || groups.some((other) => other !== group && overlap(other.bounds, bounds))) continue
    const letterings = group.letterings.map((one) => ({ ...one, at: { x: one.at.x + x, y: one.at.y + y } }))
    return { letterings, bounds }
  }
  return group
}

/** How far a span has to move to lie within another. */
const inward = (from: number, to: number, least: number, most: number): number =>
  from < least ? least - from + 1e-6 : to > most ? most - to - 1e-6 : 0
