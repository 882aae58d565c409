import type { Point } from '../../core/geometry/point.ts'
import type { Bounds } from '../../drawing/drawing.ts'
import type { Lettering } from '../../drawing/plot.ts'
import { MM_PER_PT } from '../page.ts'
import { textWidthMm, wrapText } from '../textWidth.ts'
import { grown, hasInk, type Ink } from './ink.ts'

/** Type sizes in mm, the usual one first; what is read on a template in the hand is no smaller than the last. */
const SIZES_MM = [4, 3.6, 3.2, 2.8, 2.5, 2.2] as const
const LEAST_MM = 2.2
const TITLE_TIMES = 1.4
const LEADING = 1.45
/** Height of its digits in parts of the type size. */
const HEIGHT = 0.74
const AIR_MM = 1.5
/** Lines no longer than the smallest sheet shows whole, so that no seam has to run through them. */
const MOST_MM = 150
/** A text broken into more rows than this to a line is a column of words: read from the right it goes on one. */
const MOST_ROWS = 2
/** Places tried across a room, from its middle outward, in parts of what is left over. */
const PLACES = [0.5, 0.3, 0.7, 0.1, 0.9] as const

export interface TitleLines {
  readonly title: string
  readonly others: readonly string[]
}

/** Lines of text about their common middle, not yet placed. */
interface Set {
  readonly lines: readonly { readonly text: string; readonly sizeMm: number; readonly downMm: number }[]
  readonly widthMm: number
  readonly heightMm: number
}

/** The title inside a room, as large as it goes there clear of all ink, upright or read from the right; null where even the least size has no place. */
export function titleInRoom(title: TitleLines, room: Bounds, ink: Ink): readonly Lettering[] | null {
  const [widthMm, heightMm] = [room.maxX - room.minX - 2 * AIR_MM, room.maxY - room.minY - 2 * AIR_MM]
  for (const sizeMm of SIZES_MM) {
    for (const turnDeg of [0, -90] as const) {
      const [along, across] = turnDeg === 0 ? [widthMm, heightMm] : [heightMm, widthMm]
      const set = setLines(title, sizeMm, Math.min(along, MOST_MM))
      if (set === null || set.heightMm > across) continue
      const [w, h] = turnDeg === 0 ? [set.widthMm, set.heightMm] : [set.heightMm, set.widthMm]
      for (const up of PLACES)
        for (const side of PLACES) {
          const at = {
            x: room.minX + AIR_MM + w / 2 + side * (widthMm - w),
            y: room.minY + AIR_MM + h / 2 + up * (heightMm - h),
          }
          const box = { minX: at.x - w / 2, minY: at.y - h / 2, maxX: at.x + w / 2, maxY: at.y + h / 2 }
          if (!hasInk(ink, grown(box, AIR_MM / 2))) return placed(set, at, turnDeg)
        }
    }
  }
  return null
}

/** The title under a box, at its usual size where it goes, about the box's middle; and the box with it. */
export function titleUnder(title: TitleLines, box: Bounds, leastMm: number): { letterings: Lettering[]; box: Bounds } {
  const widthMm = Math.min(Math.max(box.maxX - box.minX - 2 * AIR_MM, leastMm), MOST_MM)
  const set =
    SIZES_MM.map((sizeMm) => setLines(title, sizeMm, widthMm)).find((one) => one !== null) ??
    setLines(title, LEAST_MM, Number.POSITIVE_INFINITY)!
  const middle = (box.minX + box.maxX) / 2
  const at = { x: middle, y: box.maxY + AIR_MM + set.heightMm / 2 }
  const half = set.widthMm / 2 + AIR_MM
  return {
    letterings: placed(set, at, 0),
    box: {
      minX: Math.min(box.minX, middle - half),
      minY: box.minY,
      maxX: Math.max(box.maxX, middle + half),
      maxY: box.maxY + set.heightMm + 2 * AIR_MM,
    },
  }
}

/** null where a single word is wider than the room, or the room takes words one under another only. */
function setLines({ title, others }: TitleLines, sizeMm: number, widthMm: number): Set | null {
  const rows = [
    ...broken(title, sizeMm * TITLE_TIMES, widthMm),
    ...others.flatMap((line) => broken(line, sizeMm, widthMm)),
  ]
  if (rows.length > MOST_ROWS * (others.length + 1) || rows.some((row) => row.widthMm > widthMm || row.isTorn))
    return null
  const heightMm = rows.reduce((sum, row) => sum + row.sizeMm * LEADING, 0)
  let downMm = -heightMm / 2
  const lines = rows.map((row) => {
    downMm += row.sizeMm * LEADING
    return { text: row.text, sizeMm: row.sizeMm, downMm: downMm - (row.sizeMm * LEADING) / 2 }
  })
  return { lines, widthMm: Math.max(...rows.map((row) => row.widthMm)), heightMm }
}

function broken(text: string, sizeMm: number, widthMm: number) {
  const sizePt = sizeMm / MM_PER_PT
  const lines = Number.isFinite(widthMm) ? wrapText(text, Math.max(widthMm, 1), sizePt) : [text]
  // A word torn between its letters is not to be read on a template.
  const isTorn =
    lines.join(' ') !==
      text
        .split(/\s+/u)
        .filter((word) => word !== '')
        .join(' ') && lines.length > 1
  return lines.map((line) => ({ text: line, sizeMm, widthMm: textWidthMm(line, sizePt), isTorn }))
}

const placed = ({ lines }: Set, at: Point, turnDeg: 0 | -90): Lettering[] =>
  lines.map(({ text, sizeMm, downMm }) => ({
    text,
    at: turnDeg === 0 ? { x: at.x, y: at.y + downMm } : { x: at.x + downMm, y: at.y },
    sizeMm,
    heightMm: sizeMm * HEIGHT,
    turnDeg,
  }))
