import type { Point } from '../point.ts'

/** Readings of half an outline, x from the tail, y the half-width. */
export interface HalfReadings {
  /** Half-widths at given x, by rising x. */
  readonly rows: readonly Point[]
  /** x at given half-widths, near the tail and near the neck. */
  readonly tailRows: readonly Point[]
  readonly neckRows: readonly Point[]
  readonly lengthMm: number
  /** The outline ends in a straight across, from here to the centreline; 0: none. */
  readonly neckFlatHalfWidthMm: number
}

/**
 * All readings in order along the outline from tail to neck: as far as the tail's reach by x + y, from where the neck's begin by x - y,
 * between them by x. What only repeats an end of the outline, or another reading, is left out.
 */
export function orderReadings(readings: HalfReadings): Point[] {
  const { rows, tailRows, neckRows, lengthMm, neckFlatHalfWidthMm } = readings
  const isEnd = ({ x, y }: Point) => (x === 0 && y === 0) || (x === lengthMm && y <= neckFlatHalfWidthMm)
  const tail = tailRows.filter((point) => !isEnd(point))
  const neck = neckRows.filter((point) => !isEnd(point))
  const tailEnd = Math.max(...tail.map((point) => point.x), Number.NEGATIVE_INFINITY)
  const neckStart = Math.min(...neck.map((point) => point.x), Number.POSITIVE_INFINITY)
  const between: Point[] = []
  for (const row of rows) {
    if (isEnd(row)) continue
    if (row.x <= tailEnd) tail.push(row)
    else if (row.x >= neckStart) neck.push(row)
    else between.push(row)
  }
  tail.sort((a, b) => a.x + a.y - (b.x + b.y))
  between.sort((a, b) => a.x - b.x)
  neck.sort((a, b) => a.x - a.y - (b.x - b.y))
  const ordered = [...tail, ...between, ...neck]
  return ordered.filter((point, i) => ordered.findIndex(({ x, y }) => x === point.x && y === point.y) === i)
}
