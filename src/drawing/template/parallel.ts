import { type Curve, curveAt, insetPoint, stretchOfCurve } from '../../core/geometry/curve.ts'
import type { Point } from '../../core/geometry/point.ts'
import { curveCommands } from '../curvePath.ts'
import type { PathCommand } from '../drawing.ts'
import { type Meeting, meetingOf } from './meeting.ts'

/** How a parallel ends: carried to the centreline, cut off there or led on to it, or just where the curve ends. */
export type ParallelEnd = 'centreline' | 'free'

const CLOSE_MM = 1e-6

/** One stretch of a parallel that runs the same way as its curve, and what of it is drawn. */
interface Run {
  readonly curve: Curve
  readonly fromMm: number
  readonly toMm: number
  /** Turned to the right in a corner before it; 0 where there is none. */
  readonly turnRad: number
}

/**
 * The parallel of a half outline at `insetMm` to its right (inward; negative: outward), as one path from tail to neck, y mirrored on request.
 *
 * At a corner that looks away from the parallel it goes round in an arc about the corner; at one that looks toward it both sides end where
 * they meet. Where the curve bends more tightly than the parallel can follow, that stretch would turn inside out: it is dropped, and its
 * neighbours are carried to where they meet. Nothing is left of a curve that is too tight all along. Source: derived.
 */
export function parallelCommands(
  curve: Curve,
  insetMm: number,
  { mirrored, start, end }: { readonly mirrored: boolean; readonly start: ParallelEnd; readonly end: ParallelEnd },
): PathCommand[] {
  const flip = mirrored ? -1 : 1
  const runs = trimmedRuns(runsOf(curve, insetMm), insetMm)
  const [first, last] = [runs[0], runs.at(-1)]
  if (first === undefined || last === undefined) return []
  const at = (run: Run, s: number) => insetPoint(run.curve, s, insetMm)
  const tail = start === 'centreline' ? tailCorner(first) : null
  const neck = end === 'centreline' ? neckCorner(last) : null
  if (tail !== null) runs[0] = { ...first, fromMm: fromCentreline(first, insetMm) }
  if (neck !== null) runs.push({ ...runs.pop()!, toMm: toCentreline(last, insetMm) })

  const commands: PathCommand[] = []
  let here: Point | null = null
  if (tail !== null && at(runs[0]!, runs[0]!.fromMm).y > CLOSE_MM) {
    here = { x: tail.about.x + insetMm, y: 0 }
    commands.push(['M', here.x, 0])
  }
  runs.forEach((run, i) => {
    const from = at(run, run.fromMm)
    const corner = i === 0 ? tail : { about: curveAt(run.curve, 0).point, turnRad: run.turnRad }
    commands.push(
      ...(here === null ? [['M', from.x, flip * from.y] as const] : leadTo(here, from, corner, insetMm, flip)),
    )
    const { fromMm, toMm } = run
    commands.push(...curveCommands(run.curve, { fromMm, toMm, insetMm, mirrored }).slice(1))
    here = at(run, toMm)
  })
  if (neck !== null && here !== null && here.y > CLOSE_MM)
    commands.push(...leadTo(here, { x: neck.about.x - insetMm, y: 0 }, neck, insetMm, flip))
  return commands
}

/** At the centreline the other half goes on in the mirror: a corner unless the curve begins square to it, and ends so. */
const tailCorner = ({ curve }: Run): Corner => {
  const { point, headingRad } = curveAt(curve, 0)
  return { about: point, turnRad: Math.PI / 2 - headingRad }
}
const neckCorner = ({ curve }: Run): Corner => {
  const { point, headingRad } = curveAt(curve, curve.lengthMm)
  return { about: point, turnRad: headingRad + Math.PI / 2 }
}

/** The stretches between corners over which a parallel runs the same way as its curve: 1 - inset x curvature stays above nothing. */
function runsOf(curve: Curve, insetMm: number): Run[] {
  const stretches: { fromMm: number; toMm: number; turnRad: number }[] = []
  curve.pieces.forEach((piece, i) => {
    const startMm = curve.startsMm[i]!
    const [a, b] = [1 - insetMm * piece.startCurvaturePerMm, 1 - insetMm * piece.endCurvaturePerMm]
    if (piece.lengthMm < 1e-9 || (a <= CLOSE_MM && b <= CLOSE_MM)) return
    const turnsAt = a === b ? 0 : (piece.lengthMm * a) / (a - b)
    const fromMm = startMm + (a <= CLOSE_MM ? turnsAt : 0)
    const toMm = startMm + (b <= CLOSE_MM ? turnsAt : piece.lengthMm)
    const turnRad = curve.corners.find(({ sMm }) => sMm === startMm)?.turnRad ?? 0
    const before = stretches.at(-1)
    if (before !== undefined && turnRad === 0 && before.toMm >= fromMm - 1e-9) before.toMm = toMm
    else stretches.push({ fromMm, toMm, turnRad })
  })
  return stretches.map(({ fromMm, toMm, turnRad }) => {
    const own = stretchOfCurve(curve, fromMm, toMm)
    return { curve: own, fromMm: 0, toMm: own.lengthMm, turnRad }
  })
}

/** Each cut off where it meets the one before, or an earlier one where those between have no room. */
function trimmedRuns(runs: readonly Run[], insetMm: number): Run[] {
  const done: Run[] = []
  for (const run of runs) {
    if (insetMm * run.turnRad >= 0 && done.length > 0) {
      const meets = lastMeeting(done, run, insetMm)
      if (meets !== null) {
        done.length = meets.index + 1
        done[meets.index] = { ...done[meets.index]!, toMm: meets.beforeMm }
        done.push({ ...run, fromMm: meets.afterMm })
        continue
      }
    }
    done.push(run)
  }
  return done
}

function lastMeeting(done: readonly Run[], run: Run, insetMm: number): (Meeting & { readonly index: number }) | null {
  for (let index = done.length - 1; index >= 0; index--) {
    const before = done[index]!
    const meeting = meetingOf(before.curve, run.curve, insetMm)
    if (meeting !== null && meeting.beforeMm >= before.fromMm) return { ...meeting, index }
  }
  return null
}

const STEPS = 400
const HALVINGS = 50

/** Where a parallel that begins beyond the centreline comes to it; where it begins, else. */
function fromCentreline({ curve, fromMm }: Run, insetMm: number): number {
  const acrossMm = (s: number) => insetPoint(curve, s, insetMm).y
  return acrossMm(fromMm) >= -CLOSE_MM ? fromMm : crossingMm(acrossMm, fromMm, curve.lengthMm)
}

function toCentreline({ curve, toMm }: Run, insetMm: number): number {
  const acrossMm = (s: number) => insetPoint(curve, s, insetMm).y
  return acrossMm(toMm) >= -CLOSE_MM ? toMm : crossingMm(acrossMm, toMm, 0)
}

/** The first place on the way from one arc length to another at which something is no longer negative; the start where it always is. */
function crossingMm(acrossMm: (s: number) => number, startMm: number, endMm: number): number {
  for (let i = 1; i <= STEPS; i++) {
    const at = startMm + ((endMm - startMm) * i) / STEPS
    if (acrossMm(at) < 0) continue
    let [low, high] = [startMm + ((endMm - startMm) * (i - 1)) / STEPS, at]
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (low + high) / 2
      if (acrossMm(middle) < 0) low = middle
      else high = middle
    }
    return high
  }
  return startMm
}

/** What lies between two stretches of a parallel: a corner of its curve, and how far it turns to the right there. */
interface Corner {
  readonly about: Point
  readonly turnRad: number
}

/** From where a parallel has come to, on to a place: round a corner that looks away from it, else straight. */
function leadTo(from: Point, to: Point, corner: Corner | null, insetMm: number, flip: 1 | -1): PathCommand[] {
  if (Math.hypot(to.x - from.x, to.y - from.y) < 1e-9) return []
  const distanceMm = Math.abs(insetMm)
  const isRound =
    corner !== null &&
    insetMm * corner.turnRad < 0 &&
    [from, to].every(({ x, y }) => Math.abs(Math.hypot(x - corner.about.x, y - corner.about.y) - distanceMm) < CLOSE_MM)
  return [
    isRound ? ['A', distanceMm, 0, corner.turnRad * flip > 0 ? 0 : 1, to.x, flip * to.y] : ['L', to.x, flip * to.y],
  ]
}
