import type { Point } from '../core/geometry/point.ts'
import { overlap } from './bounds.ts'
import type { Bounds, Drawing, EdgeMark, EdgeMarks } from './drawing.ts'
import { boxOf, type LaidText, type Sheet, textAway } from './sheet.ts'

/** Air between the edge of a sheet and what stands at it, in parts of the figures' size. */
export const MARGIN = 0.5

/** Whether a text keeps clear of what was laid before it. */
export const isFree = (text: LaidText, taken: readonly Bounds[], airMm = 0): boolean => {
  const box = boxOf(text, airMm)
  return !taken.some((other) => overlap(box, other))
}

/** Words in the corners at the right of a drawing, as far right as they keep off its dimension lines. */
export function cornerMarks(
  { marks, bounds }: Drawing,
  sheet: Sheet,
  figureMm: number,
  taken: readonly Bounds[],
): LaidText[] {
  const place = (word: EdgeMark, y: number, down: 1 | -1) => {
    const texts = Array.from({ length: 12 }, (_, i) =>
      textAway(sheet.wordOf(word), figureMm, { x: bounds.maxX - i * 0.5 * figureMm, y }, { x: -1, y: down }),
    )
    return texts.find((text) => isFree(text, taken, 0.4 * figureMm)) ?? texts[0]!
  }
  return [
    ...(marks.top === undefined ? [] : [place(marks.top, bounds.minY, 1)]),
    ...(marks.bottom === undefined ? [] : [place(marks.bottom, bounds.maxY, -1)]),
  ]
}

/** Without those that found their place in the corners. */
export const leftAndRight = ({ left, right }: EdgeMarks): EdgeMarks => ({
  ...(left === undefined ? {} : { left }),
  ...(right === undefined ? {} : { right }),
})

/** The words at the edges of a box; those left and right stand at the height of the middle and read from the right. */
export function edgeMarks(marks: EdgeMarks, middleOf: Bounds, box: Bounds, sheet: Sheet, figureMm: number): LaidText[] {
  const inset = (MARGIN + 0.4) * figureMm
  const middle = { x: (middleOf.minX + middleOf.maxX) / 2, y: (middleOf.minY + middleOf.maxY) / 2 }
  const mark = (word: EdgeMark | undefined, at: Point, turnDeg: 0 | -90) =>
    word === undefined ? [] : [textAway(sheet.wordOf(word), figureMm, at, { x: 0, y: 0 }, turnDeg)]
  return [
    ...mark(marks.top, { x: middle.x, y: box.minY + inset }, 0),
    ...mark(marks.bottom, { x: middle.x, y: box.maxY - inset }, 0),
    ...mark(marks.left, { x: box.minX + inset, y: middle.y }, -90),
    ...mark(marks.right, { x: box.maxX - inset, y: middle.y }, -90),
  ]
}
