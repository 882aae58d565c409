import type { Computed } from '../../core/compute.ts'
import { faceOfBrace } from '../box/faceOfBrace.ts'
import type { Point } from '../../core/geometry/point.ts'
import type { BraceArchRow, BraceFace } from '../../core/instrument/brace/braceArch.ts'
import type { PlacedBrace } from '../../core/instrument/brace/placedBrace.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, ordinate } from '../dimension.ts'
import type { Drawing, EdgeMark, LabelWord, PathCommand, Shape } from '../drawing.ts'
import { figured, figuredRow } from '../figured.ts'
import { drawn, through } from '../line.ts'

/** What the strip has behind the lowest place of its arch. */
const DEPTH_MM = 54
/** How far it runs on past either end of the brace, let-in wood and all: a plane is carried off there, and the end's word stands there. */
const BEYOND_MM = 20
/** Chords of the arch: on a dome of 500 mm, the tightest that may be entered, they stand 0.001 mm off it. */
const CHORD_MM = 2
const EIGHTHS = 8
const TICK_MM = 4
const LENGTH_AT_MM = 23
const KEEP_AT_MM = 28
const TITLE_FROM_MM = 25
const TITLE_TO_MM = DEPTH_MM - 5
/** Past the ends the arch runs on straight; steeper than this it would leave the strip. */
const STEEPEST = 0.35
const NEAR_END_MM = 0.1
/** A brace that gains less than this toward tail or neck, per mm, runs straight across. */
const SLANT = 0.05
const HAIR_MM = 1e-6
/** A face that rises less than this is planed straight. */
const FLAT_MM = 0.005

/**
 * A strip to plane the gluing face of one brace to, seen from its side, its first end to the left: the arch is sawn, and a straight edge lies
 * behind it, level with the line between the brace's ends. What is sawn off is the hollow gauge for the same face. As in the numbers, places run
 * in plan and rises upright over that line. Without a brace of that number an empty drawing.
 */
export function braceArchTemplate(computed: Computed, row: number): Drawing {
  const { numbers, geometry } = computed
  const brace = geometry.bracing.placed[row]
  const empty: Drawing = {
    name: 'archTemplate',
    seenFrom: 'section',
    bounds: { minX: 0, minY: 0, maxX: 1, maxY: 1 },
    heightsTimes: 1,
    marks: {},
    shapes: [],
  }
  if (brace === undefined || brace.lengthMm <= 0) return empty
  const { lengthMm } = brace
  const face = faceOfBrace(geometry, brace)
  const own = numbers.braces[row]
  const arch = archPoints(face, lengthMm, stepsAt(computed, brace))
  const first = runOn(arch[1]!, arch[0]!, (own?.fromLetInMm ?? 0) + BEYOND_MM)
  const last = runOn(arch.at(-2)!, arch.at(-1)!, (own?.toLetInMm ?? 0) + BEYOND_MM)
  const baseMm = [first, ...arch, last].reduce((lowest, { y }) => Math.max(lowest, y), 0)
  const edgeMm = baseMm + DEPTH_MM
  const rises = numbers.braceArch.flatMap((one, i) => (one.number === row + 1 ? [{ one, i }] : []))
  const isFlat = rises.every(({ one }) => Math.abs(one.riseMm) < FLAT_MM)
  const shapes: Shape[] = [
    drawn('cut', [...through([first, arch[0]!]), ...archCommands(brace, face, arch), ['L', last.x, last.y]]),
    drawn('edge', through([first, { x: first.x, y: edgeMm }, { x: last.x, y: edgeMm }, last])),
    ...[0, lengthMm].map((x) =>
      drawn(
        'thin',
        through([
          { x, y: 0 },
          { x, y: edgeMm },
        ]),
      ),
    ),
    ...(isFlat ? [] : eighths(rises, baseMm)),
  ]
  const [from, to] = endWords(brace)
  return {
    ...empty,
    bounds: shapesBounds(shapes),
    shapes: [
      ...shapes,
      inPlace(
        figured(numbers, 'braces[].lengthMm', row),
        'below',
        { x: 0, y: baseMm + LENGTH_AT_MM },
        { x: lengthMm, y: baseMm + LENGTH_AT_MM },
      ),
      ...(from === null ? [] : [label(from, { x: 0, y: baseMm + LENGTH_AT_MM / 2 }, { x: -1, y: 0 })]),
      ...(to === null ? [] : [label(to, { x: lengthMm, y: baseMm + LENGTH_AT_MM / 2 }, { x: 1, y: 0 })]),
      label('keepSide', { x: 0, y: baseMm + KEEP_AT_MM }, { x: 1, y: 0 }),
      label('referenceEdge', { x: lengthMm / 2, y: edgeMm }, { x: 0, y: -1 }),
      // A face that is to be straight carries no rises: the word stands in their place.
      ...(isFlat
        ? [{ ...label('straightEdge', { x: lengthMm / 2, y: baseMm }, { x: 0, y: 1 }), isOptional: false }]
        : []),
    ],
    titleRoom: { minX: 2, maxX: lengthMm - 2, minY: baseMm + TITLE_FROM_MM, maxY: baseMm + TITLE_TO_MM },
  }
}

/** Where a flat planed off the dome begins under a brace, the face steps or bends: just before, and just past it. */
function stepsAt({ geometry }: Computed, { plan, from, way }: PlacedBrace): readonly number[] {
  const { flat } = geometry.top
  if (flat === null || plan.plate !== 'top' || Math.abs(way.x) < 1e-9) return []
  const at = (flat.fromMm - from.point.x) / way.x
  return [at - HAIR_MM, at + HAIR_MM]
}

/** Along the face from end to end, every eighth among them. */
function archPoints(face: BraceFace, lengthMm: number, stepsMm: readonly number[]): Point[] {
  const steps = EIGHTHS * Math.max(Math.ceil(lengthMm / EIGHTHS / CHORD_MM), 1)
  const even = Array.from({ length: steps + 1 }, (_, i) => (lengthMm * i) / steps)
  return [...even, ...stepsMm.filter((at) => at > 0 && at < lengthMm)]
    .sort((a, b) => a - b)
    .map((x) => ({ x, y: -face.riseMm(x) }))
}

/** The arch, its start already reached: an arc of its own is one, a plate's section goes by its chords. */
function archCommands({ plan, lengthMm }: PlacedBrace, { radiusMm }: BraceFace, arch: readonly Point[]): PathCommand[] {
  if (plan.underside === 'flat') return [['L', lengthMm, 0]]
  if (plan.underside === 'own' && typeof radiusMm === 'number') return [['A', radiusMm, 0, 1, lengthMm, 0]]
  return arch.slice(1).map(({ x, y }) => ['L', x, y] as const)
}

/** Straight on past an end, by a distance along the strip. */
function runOn(before: Point, end: Point, byMm: number): Point {
  const way = Math.sign(end.x - before.x) || 1
  const slope = (end.y - before.y) / Math.max(Math.abs(end.x - before.x), NEAR_END_MM)
  return { x: end.x + way * byMm, y: end.y + Math.min(Math.max(slope, -STEEPEST), STEEPEST) * byMm }
}

/** A tick at every eighth between the ends, and what the arch has risen there. */
function eighths(rises: readonly { readonly one: BraceArchRow; readonly i: number }[], baseMm: number): Shape[] {
  return rises.slice(1, -1).flatMap(({ one, i }, part): Shape[] => {
    const foot = { x: one.alongMm, y: baseMm + TICK_MM }
    return [
      drawn('thin', through([{ x: one.alongMm, y: -one.riseMm }, foot])),
      ordinate(
        figuredRow('braceArch[].riseMm', i, one.riseMm),
        foot,
        { x: 0, y: 1 },
        part + 1 === EIGHTHS / 2 ? 1 : part % 2 === 1 ? 2 : 3,
        true,
      ),
    ]
  })
}

/**
 * Which end is which: by the sides a brace runs between, or by tail and neck. Twins share a strip, so theirs are never told by a side; where they run
 * straight across, only the end nearer the centreline is.
 */
function endWords({
  way,
  half,
  from,
  to,
}: PlacedBrace): readonly [EdgeMark | LabelWord | null, EdgeMark | LabelWord | null] {
  const isAcross = Math.abs(way.y) > Math.abs(way.x)
  if (half === 'single' && isAcross) return way.y > 0 ? ['bass', 'treble'] : ['treble', 'bass']
  if (half === 'single' || Math.abs(way.x) > SLANT) return way.x > 0 ? ['tail', 'neck'] : ['neck', 'tail']
  return Math.abs(from.point.y) < Math.abs(to.point.y) ? ['centreline', null] : [null, 'centreline']
}
