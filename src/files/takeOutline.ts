import {
  type DrawnOutline,
  LEAST_LENGTH_MM,
  MOST_LENGTH_MM,
  type OutlineProblem,
  type OutlineReading,
  outlineFromPath,
} from '../core/instrument/outlineFromPath.ts'
import type { Healed } from '../core/geometry/tracePath.ts'
import type { DrawnPathPlan } from '../core/plan.ts'
import { MOST_STROKES } from '../record/fields.ts'
import { outlineSchema } from '../record/outlineSchema.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { chosenLine, type DrawnLine, mmPerUnitOf, traceLines, type UnitChoice } from './drawingLines.ts'
import type { OpenedDrawing } from './openDrawing.ts'

/** How the maker wants a drawing read. */
export interface DrawingChoice extends Pick<OutlineReading, 'end' | 'treble' | 'axis'> {
  readonly unit: UnitChoice
  /** Counts only where the drawing is scaled to it. */
  readonly bodyLengthMm: number
  /** Key of a line; null: the one that looks most like an outline. */
  readonly line: number | null
  /** null: each side as it was drawn where they differ plainly, else the bass side mirrored. */
  readonly symmetry: OutlineReading['symmetry'] | null
  /** Where a centreline along x or y lies; null: in the middle. */
  readonly axisAtMm: number | null
  readonly readToMm: number
}

export interface TakenOutline {
  readonly plan: DrawnPathPlan
  readonly outline: DrawnOutline
  readonly symmetry: OutlineReading['symmetry']
  /** The two sides of a whole outline are not each other's mirror image. */
  readonly sidesDiffer: boolean
}

/** tooFine: more strokes, or places farther off, than a record keeps. */
export type TakeProblem = OutlineProblem | 'tooFine'

/** The lines of a drawing in true millimetres. */
export interface ReadLines {
  /** The longest first, no more than can be looked through. */
  readonly lines: readonly DrawnLine[]
  readonly notListed: number
  readonly healed: Healed
  /** The one that is read; null: there is none. */
  readonly line: DrawnLine | null
}

/** What is asked of a body's length, and of where its centreline lies in the drawing. */
export const DRAWING_RANGES = {
  bodyLengthMm: { type: 'length', quantity: 'bodyLength', minMm: LEAST_LENGTH_MM, maxMm: MOST_LENGTH_MM },
  axisAtMm: { type: 'length', quantity: 'bodyLength', minMm: -5000, maxMm: 5000, open: true },
} as const

const MOST_LISTED = 40
/** Below this, sides are one another's mirror image. */
const SAME_MM = 0.01
/** From this on they are taken to be meant to differ. */
const DIFFER_MM = 1

/** The lines of an opened drawing once its unit, or the length of the body, is known. */
export function readLines(
  { file }: OpenedDrawing,
  { unit, bodyLengthMm, line: key }: Pick<DrawingChoice, 'unit' | 'bodyLengthMm' | 'line'>,
): ReadLines {
  const { lines, healed } = traceLines(file, mmPerUnitOf(file, unit, bodyLengthMm, key))
  return {
    lines: lines.slice(0, MOST_LISTED),
    notListed: Math.max(lines.length - MOST_LISTED, 0),
    healed,
    line: chosenLine(lines, key) ?? null,
  }
}

/** A line as it would stand in the record, or why it gives no outline. */
export function takeOutline(
  line: DrawnLine | null,
  { end, treble, axis, axisAtMm, symmetry, readToMm }: Omit<DrawingChoice, 'unit' | 'bodyLengthMm' | 'line'>,
  fileName: string,
): Result<TakenOutline, TakeProblem> {
  if (line === null) return refuse('nothing')
  const { chain } = line
  if (chain.path.strokes.length > 2 * MOST_STROKES) return refuse('tooFine')
  const read = (how: OutlineReading['symmetry']) =>
    outlineFromPath(chain, { mmPerUnit: 1, end, treble, axis, axisAtMm, symmetry: how })
  const first = read(symmetry ?? 'mirrorBass')
  if (!first.ok) return first
  const used = symmetry ?? (first.value.asymmetryMm >= DIFFER_MM ? 'asDrawn' : 'mirrorBass')
  const found = symmetry === null && used === 'asDrawn' ? read(used) : first
  if (!found.ok) return found
  const { bass, treble: drawnTreble, asymmetryMm } = found.value
  const sidesDiffer = asymmetryMm >= SAME_MM
  const plan = { bass, treble: sidesDiffer ? drawnTreble : null, readToMm, fileName }
  if (!outlineSchema.shape.drawnPath.safeParse(plan).success) return refuse('tooFine')
  return accept({ plan, outline: found.value, symmetry: used, sidesDiffer })
}
