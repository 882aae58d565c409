import type { Computed, Geometry } from '../core/compute.ts'
import { insetLengthMm, insetPoint } from '../core/geometry/curve.ts'
import { coveredByBlock } from '../core/instrument/lining.ts'
import type { RimPlace } from '../core/instrument/rim.ts'
import type { Plan } from '../core/plan.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label, ordinate } from './dimension.ts'
import type { Drawing, LabelWord, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { flipped } from './flipped.ts'
import { type HalfName, type InnerStretch, innerStretches } from './innerFace.ts'
import { closed, drawn, through } from './line.ts'
import { curveThrough } from './smooth.ts'

const STEP_MM = 12
/** Of a face however long: no guitar needs as many. */
const MOST_STEPS = 150

/** What the plan says of the wood glued inside. */
export type InsidePlan = Pick<Plan, 'linings' | 'sideBraces' | 'blocks'>

/**
 * One side from the inside of the body, its inner face laid along its length: edges of the rim, linings between the blocks, side braces with
 * their lengths and their places along the outer face, and what the blocks cover. Seen so, the bass side has its tail to the left, the treble
 * side to the right. A treble side with a pointed horn is laid piece by piece, each to the mitre.
 */
export function insideDrawing(computed: Computed, plan: InsidePlan, side: HalfName): Drawing {
  const { numbers, geometry } = computed
  const ownTreble = side === 'treble' && !geometry.outline.isMirrored
  const face = laidInside(geometry, ownTreble ? 'treble' : 'bass')
  const heights = { top: plan.linings.top.heightMm, back: plan.linings.back.heightMm }
  const shapes: Shape[] = [
    ...edges(face),
    ...linings(face, blockEnds(computed, plan, ownTreble, face), heights),
    ...braces(computed, plan, ownTreble, face, heights),
  ]
  const bounds = shapesBounds(shapes)
  const rows = ownTreble ? numbers.trebleBraces : numbers.sideBraces
  const list = ownTreble ? 'trebleBraces' : 'sideBraces'
  const figures = rows.flatMap((brace, row): Shape[] => {
    const { u, top, back } = braceAt(face, brace.alongOuterMm, plan, heights)
    const x = u - plan.sideBraces.widthMm / 2
    return [
      ...(brace.lengthMm > 0
        ? [inPlace(figured(numbers, `${list}[].lengthMm`, row), 'left', { x, y: top }, { x, y: back })]
        : []),
      ordinate(figured(numbers, `${list}[].alongOuterMm`, row), { x: u, y: bounds.maxY }, { x: 0, y: 1 }, 0, true),
    ]
  })
  const places = (ownTreble ? numbers.treblePlaces : numbers.places).flatMap(({ place, alongOuterMm }): Shape[] => {
    const word = PLACE_LABELS[place]
    return word === null ? [] : [label(word, { x: face.at(alongOuterMm).u, y: bounds.minY }, { x: 0, y: -1 })]
  })
  const drawing: Drawing = {
    name: 'inside',
    seenFrom: 'inside',
    bounds,
    heightsTimes: 1,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      ...figures,
      ...places,
      label(
        side === 'bass' ? 'bassFromInside' : 'trebleFromInside',
        { x: (bounds.minX + bounds.maxX) / 2, y: bounds.minY },
        { x: 0, y: -2.6 },
      ),
    ],
  }
  return side === 'bass' ? drawing : flipped(drawing, 'x')
}

interface LaidPlace {
  /** Along the inner face from the tail. */
  readonly u: number
  /** On the sheet: the edges of the rim at the inner face. */
  readonly top: number
  readonly back: number
}

/** An inner face laid out: its pieces, and what stands at an arc length of the outer face. */
interface LaidFace {
  readonly pieces: readonly { readonly fromMm: number; readonly toMm: number }[]
  readonly lengthMm: number
  readonly at: (outerMm: number, piece?: number) => LaidPlace
}

function laidInside(geometry: Geometry, side: HalfName): LaidFace {
  const stretches = innerStretches(geometry, side)
  const along = ({ site }: InnerStretch, s: number) => insetLengthMm(site.half, s, site.sideThicknessMm)
  const starts = [0]
  for (const stretch of stretches)
    starts.push(starts.at(-1)! + Math.max(along(stretch, stretch.toMm) - along(stretch, stretch.fromMm), 0))
  return {
    pieces: stretches.map(({ site, fromMm, toMm }) => ({ fromMm: site.startMm + fromMm, toMm: site.startMm + toMm })),
    lengthMm: starts.at(-1)!,
    at: (outerMm, piece) => {
      const found = stretches.findIndex(({ site }) => outerMm <= site.startMm + site.half.lengthMm + 1e-9)
      const i = piece ?? (found < 0 ? stretches.length - 1 : found)
      const stretch = stretches[i]!
      const { site, fromMm, toMm } = stretch
      const s = Math.min(Math.max(outerMm - site.startMm, fromMm), toMm)
      const { x, y } = insetPoint(site.half, s, site.sideThicknessMm)
      return {
        u: starts[i]! + along(stretch, s) - along(stretch, fromMm),
        top: -site.top.heightMm(x, y),
        back: -site.back.heightMm(x, y),
      }
    },
  }
}

/** Places along one piece, both ends among them. */
function alongPiece(face: LaidFace, piece: number, fromMm: number, toMm: number): LaidPlace[] {
  const parts = Math.min(Math.max(1, Math.ceil((toMm - fromMm) / STEP_MM)), MOST_STEPS)
  return Array.from({ length: parts + 1 }, (_, i) => face.at(fromMm + ((toMm - fromMm) * i) / parts, piece))
}

function edges(face: LaidFace): Shape[] {
  return face.pieces.flatMap(({ fromMm, toMm }, piece): Shape[] => {
    const places = alongPiece(face, piece, fromMm, toMm)
    const [first, last] = [places[0]!, places.at(-1)!]
    return [
      drawn('edge', curveThrough(places.map(({ u, top }) => ({ x: u, y: top })))),
      drawn('edge', curveThrough(places.map(({ u, back }) => ({ x: u, y: back })))),
      ...[first, last].map(({ u, top, back }) =>
        drawn(
          'edge',
          through([
            { x: u, y: top },
            { x: u, y: back },
          ]),
        ),
      ),
    ]
  })
}

/** Arc lengths of the outer face between which a side is free of the blocks. */
function blockEnds(
  { geometry }: Computed,
  plan: InsidePlan,
  ownTreble: boolean,
  face: LaidFace,
): { readonly fromMm: number; readonly toMm: number } {
  const { outline, rimSite } = geometry
  const run = ownTreble
    ? { curve: outline.treble, woodEndMm: outline.trebleWoodEndMm }
    : { curve: outline.bass, woodEndMm: outline.bass.lengthMm }
  const covered = (end: 'tail' | 'neck') => coveredByBlock(run, end, plan.blocks[end], rimSite.sideThicknessMm).outerMm
  const endMm = face.pieces.at(-1)!.toMm
  const fromMm = Math.min(covered('tail'), endMm)
  return { fromMm, toMm: Math.max(endMm - covered('neck'), fromMm) }
}

/** Linings with their heights, from block to block, and the blocks themselves as hidden lines where they begin. */
function linings(
  face: LaidFace,
  free: { readonly fromMm: number; readonly toMm: number },
  heights: { readonly top: number; readonly back: number },
): Shape[] {
  const strips = face.pieces.flatMap(({ fromMm, toMm }, piece): Shape[] => {
    const [a, b] = [Math.max(fromMm, free.fromMm), Math.min(toMm, free.toMm)]
    if (b - a < 1e-6) return []
    const places = alongPiece(face, piece, a, b)
    return [
      drawn('thin', curveThrough(places.map(({ u, top }) => ({ x: u, y: top + heights.top })))),
      drawn('thin', curveThrough(places.map(({ u, back }) => ({ x: u, y: back - heights.back })))),
    ]
  })
  const blocks = [free.fromMm, free.toMm].map((s) => {
    const { u, top, back } = face.at(s)
    return drawn(
      'hidden',
      through([
        { x: u, y: top },
        { x: u, y: back },
      ]),
    )
  })
  return [...strips, ...blocks]
}

/** A brace's middle on the sheet, and its ends. */
function braceAt(
  face: LaidFace,
  alongOuterMm: number,
  plan: InsidePlan,
  heights: { readonly top: number; readonly back: number },
): LaidPlace {
  const { u, top, back } = face.at(alongOuterMm)
  return plan.sideBraces.ends === 'fullDepth'
    ? { u, top, back }
    : { u, top: top + heights.top, back: back - heights.back }
}

function braces(
  { numbers }: Computed,
  plan: InsidePlan,
  ownTreble: boolean,
  face: LaidFace,
  heights: { readonly top: number; readonly back: number },
): Shape[] {
  return (ownTreble ? numbers.trebleBraces : numbers.sideBraces).flatMap(({ alongOuterMm, lengthMm }): Shape[] => {
    if (lengthMm <= 0) return []
    const { u, top, back } = braceAt(face, alongOuterMm, plan, heights)
    const half = plan.sideBraces.widthMm / 2
    const corners = [
      { x: u - half, y: top },
      { x: u + half, y: top },
      { x: u + half, y: back },
      { x: u - half, y: back },
    ]
    return [drawn('edge', closed(through(corners)))]
  })
}

const PLACE_LABELS: Record<RimPlace, LabelWord | null> = {
  tail: null,
  lowerBout: 'lowerBout',
  waist: 'waist',
  upperBout: 'upperBout',
  horn: 'hornTip',
  neck: null,
}
