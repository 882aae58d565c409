import { closePath, lineToAxis, withoutBaseLine } from '../geometry/closedPath.ts'
import { largestDistanceMm } from '../geometry/curveDistance.ts'
import { findMirrorAxis } from '../geometry/mirrorAxis.ts'
import type { Path } from '../geometry/path.ts'
import { endsMeet, movePathEnd, pathBounds, pathEnd, pathLengthMm, transformPath } from '../geometry/path.ts'
import { curveOfPath } from '../geometry/pathCurve.ts'
import { distanceMm } from '../geometry/point.ts'
import type { StraightLine } from '../geometry/stroke.ts'
import { splitAtAxis, standHalf, widestAt } from './outlineHalves.ts'

/** How the maker wants a drawn line read. */
export interface OutlineReading {
  /** Millimetres to a unit of the drawing; 1 for a drawing in mm. */
  readonly mmPerUnit: number
  /** asFound: the tail is the end nearer to the widest place. */
  readonly end: 'asFound' | 'turned'
  /** asDrawn: seen with the tail to the left, the treble side is the upper one of a whole outline. */
  readonly treble: 'asDrawn' | 'swapped'
  /** Whether both sides of a whole outline are one side and its mirror image, or each as it was drawn. */
  readonly symmetry: 'mirrorBass' | 'mirrorTreble' | 'asDrawn'
  /** Centreline of a whole outline: found as its axis of symmetry, or along the drawing's x or y. */
  readonly axis: 'found' | 'horizontal' | 'vertical'
  /** Where a centreline along x or y lies, mm in the drawing; left out or null: midway between the outline's outermost places. */
  readonly axisAtMm?: number | null
}

/** Both halves in the body's frame: from the tail (0, 0) to the neck (length, 0), y the half-width. */
export interface DrawnOutline {
  readonly bass: Path
  /** null: the bass half mirrored. */
  readonly treble: Path | null
  readonly lengthMm: number
  /** The greatest half-width of either side, added. */
  readonly widestMm: number
  /** How far one side of a whole outline, mirrored, lies from the other at most; 0 for a half. */
  readonly asymmetryMm: number
  readonly drawnAs: 'half' | 'whole'
  /** A centreline drawn with a half was left out. */
  readonly centrelineDropped: boolean
  /** Left between the ends of a whole outline, and closed; 0 where it was closed. */
  readonly gapMm: number
  /** The centreline, from the tail to the neck, in mm of the drawing. */
  readonly centreline: StraightLine
}

/**
 * nothing      no strokes, or numbers that are none
 * tooSmall     shorter than any body, or so thin that it is a line
 * tooLarge     longer than any body
 * open         neither a half from the tail to the neck nor closed
 * noAxis       no axis of symmetry; the maker has to say how the centreline runs
 * crossesAxis  crosses its centreline elsewhere than at the tail and at the neck
 */
export type OutlineProblem = 'nothing' | 'tooSmall' | 'tooLarge' | 'open' | 'noAxis' | 'crossesAxis'

export type OutlineResult =
  | { readonly ok: true; readonly value: DrawnOutline }
  | { readonly ok: false; readonly problem: OutlineProblem }

export const LEAST_LENGTH_MM = 50
export const MOST_LENGTH_MM = 3000
/** Ends of a whole outline that are no farther apart meet. */
const GAP_MM = 0.5
/** A half reaches no farther along its centreline than its ends do, but for this. */
const BEYOND_SHARE = 1.05
/** A half may cross its centreline by this much. */
const ACROSS_MM = 0.5
/** A body whose sides differ by more has no axis that could be found. */
const MOST_ASYMMETRY_MM = 15

const refuse = (problem: OutlineProblem): OutlineResult => ({ ok: false, problem })

/** The two halves of a body outline from one drawn line, or why it is none. */
export function outlineFromPath(
  { path: drawn, isClosed }: { readonly path: Path; readonly isClosed: boolean },
  reading: OutlineReading,
): OutlineResult {
  if (!(reading.mmPerUnit > 0)) return refuse('nothing')
  const path = transformPath(drawn, { scale: reading.mmPerUnit })
  const lengthMm = pathLengthMm(path)
  if (!(lengthMm > 0) || !Number.isFinite(lengthMm)) return refuse('nothing')
  const box = pathBounds(path)
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY)
  if (size < LEAST_LENGTH_MM) return refuse('tooSmall')
  if (size > MOST_LENGTH_MM) return refuse('tooLarge')
  if (!isClosed && !endsMeet(path, GAP_MM)) return halfOutline(path, false, reading)
  const gapMm = distanceMm(path.start, pathEnd(path))
  const closed = gapMm <= GAP_MM ? movePathEnd(path, path.start) : closePath(path)
  const half = withoutBaseLine(closed)
  if (half !== null) return halfOutline(half, true, reading)
  return wholeOutline(closed, gapMm, reading)
}

function halfOutline(path: Path, centrelineDropped: boolean, reading: OutlineReading): OutlineResult {
  const { start } = path
  const end = pathEnd(path)
  const axis = { point: start, headingRad: Math.atan2(end.y - start.y, end.x - start.x) }
  const lengthMm = distanceMm(start, end)
  const { minX, maxX, minY, maxY } = pathBounds(transformPath(path, lineToAxis(axis)))
  if (maxX - minX > BEYOND_SHARE * lengthMm) return refuse('open')
  if (Math.min(maxY, -minY) > ACROSS_MM) return refuse('crossesAxis')
  if (lengthMm < LEAST_LENGTH_MM || Math.max(maxY, -minY) < LEAST_LENGTH_MM / 10) return refuse('tooSmall')
  const half = standHalf(path, axis)
  const tailFirst = widestAt(half) <= lengthMm / 2 === (reading.end === 'asFound')
  const bass = tailFirst ? half : turnRound(half, lengthMm)
  return {
    ok: true,
    value: {
      bass,
      treble: null,
      lengthMm,
      widestMm: 2 * pathBounds(bass).maxY,
      asymmetryMm: 0,
      drawnAs: 'half',
      centrelineDropped,
      gapMm: 0,
      centreline: tailFirst ? axis : { point: end, headingRad: axis.headingRad + Math.PI },
    },
  }
}

/** A half, from the tail to the neck, with tail and neck changed over. */
const turnRound = (half: Path, lengthMm: number): Path =>
  standHalf(half, { point: { x: lengthMm, y: 0 }, headingRad: Math.PI })

function wholeOutline(closed: Path, gapMm: number, reading: OutlineReading): OutlineResult {
  const line = axisOf(closed, reading)
  const split = splitAtAxis(transformPath(closed, lineToAxis(line)))
  if (split === null) return refuse('crossesAxis')
  const { upper, lower, fromX, toX } = split
  const lengthMm = toX - fromX
  const tall = Math.max(pathBounds(upper).maxY, pathBounds(lower).maxY)
  if (lengthMm < LEAST_LENGTH_MM || tall < LEAST_LENGTH_MM / 10) return refuse('tooSmall')
  const wider = pathBounds(upper).maxY >= pathBounds(lower).maxY ? upper : lower
  const tailFirst = widestAt(wider) <= lengthMm / 2 === (reading.end === 'asFound')
  // Turned round in the plane, the upper side comes to lie below.
  const sides = tailFirst ? [upper, lower] : [turnRound(lower, lengthMm), turnRound(upper, lengthMm)]
  const [treble, bass] = reading.treble === 'asDrawn' ? (sides as [Path, Path]) : ([sides[1], sides[0]] as [Path, Path])
  const asymmetryMm = largestDistanceMm(curveOfPath(treble).curve, curveOfPath(bass).curve)
  if (reading.axis === 'found' && asymmetryMm > MOST_ASYMMETRY_MM) return refuse('noAxis')
  const kept =
    reading.symmetry === 'asDrawn'
      ? { bass, treble }
      : { bass: reading.symmetry === 'mirrorBass' ? bass : treble, treble: null }
  const along = tailFirst ? fromX : toX
  return {
    ok: true,
    value: {
      ...kept,
      lengthMm,
      widestMm: pathBounds(kept.bass).maxY + pathBounds(kept.treble ?? kept.bass).maxY,
      asymmetryMm,
      drawnAs: 'whole',
      centrelineDropped: false,
      gapMm,
      centreline: {
        point: {
          x: line.point.x + along * Math.cos(line.headingRad),
          y: line.point.y + along * Math.sin(line.headingRad),
        },
        headingRad: line.headingRad + (tailFirst ? 0 : Math.PI),
      },
    },
  }
}

function axisOf(closed: Path, reading: OutlineReading): StraightLine {
  if (reading.axis === 'found') return findMirrorAxis(curveOfPath(closed).curve)
  const { minX, minY, maxX, maxY } = pathBounds(closed)
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }
  return reading.axis === 'horizontal'
    ? { point: { x: middle.x, y: reading.axisAtMm ?? middle.y }, headingRad: 0 }
    : { point: { x: reading.axisAtMm ?? middle.x, y: middle.y }, headingRad: Math.PI / 2 }
}
