import type { Computed } from '../../core/compute.ts'
import { type Curve, insetPoint } from '../../core/geometry/curve.ts'
import type { Point } from '../../core/geometry/point.ts'
import { type FormLine, formInsetMm, type Jigs } from '../../core/jigs.ts'
import { shapesBounds } from '../bounds.ts'
import { curveCommands } from '../curvePath.ts'
import { label } from '../dimension.ts'
import type { Bounds, Drawing, PathCommand, Shape } from '../drawing.ts'
import type { HalfName } from '../innerFace.ts'
import { drawn, through } from '../line.ts'
import {
  alongCentreline,
  freeXMm,
  type Half,
  halfOf,
  halfWidths,
  inwardAt,
  onSheet,
  placeFigures,
  placeNames,
  roomOnHalf,
} from './half.ts'
import { type ParallelEnd, parallelCommands } from './parallel.ts'

/** How far an outside mould's board stands clear of its line at the least. */
const CLEAR_MM = 50
const TICK_MM = 12
const KEEP_MM = 20
const TITLE_OFF_MM = 22
/** The name of the dotted line stands on its free side. */
const NAME_MM = 3

/**
 * The line of an outside mould, of a bending form or of an inside caul for one half, beside the outer face of the sides, which is dotted, named,
 * and what all figures belong to. The straight edge is the centreline. `piece`: which piece of wood of a treble side a bending form is for, counted from 0 at the tail; the other
 * two run round the whole half, along the joint of a cutaway too.
 */
export function formLineTemplate(computed: Computed, line: FormLine, side: HalfName, jigs: Jigs, piece = 0): Drawing {
  const formed = formedOf(computed, line, side, piece)
  const { half, curve } = formed
  const insetMm = formInsetMm(line, computed.geometry.rimSite.sideThicknessMm, jigs)
  const cut = parallelCommands(curve, insetMm, { mirrored: half.flip < 0, start: formed.start, end: formed.end })
  const ghost = drawn('ghost', curveCommands(curve, { mirrored: half.flip < 0 }))
  const body = shapesBounds([ghost, drawn('cut', cut)])
  const [from, to] = endsOf(cut, half)
  const isOutside = line === 'mould'
  const shapes: Shape[] = [
    ghost,
    ...placeTicks(formed, insetMm, isOutside ? -TICK_MM : TICK_MM),
    ...(isOutside
      ? boardRound(half, body, from, to)
      : formed.isFromTail
        ? edgeInside(from, to)
        : boardInside(half, body, from, to)),
    ...(cut.length === 0 ? [] : [drawn('cut', cut)]),
  ]
  const room = isOutside ? roomOnBoard(half, body) : formed.isFromTail ? roomOnHalf(computed, half) : null
  return {
    name: 'formLine',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: {},
    shapes: [
      ...shapes,
      ...(formed.isFromTail ? [...halfWidths(half), ...alongCentreline(half, placeFigures(half))] : []),
      ...placeNames(half, isOutside ? -TICK_MM : insetMm + TICK_MM),
      label('referenceEdge', { x: edgeXMm(computed, formed, isOutside, body, to), y: 0 }, { x: 0, y: half.flip }),
      label('keepSide', keepAt(computed, formed, isOutside, insetMm, body), { x: 0, y: 0 }),
      outlineName(formed, isOutside ? 1 : -1),
      ...ends(formed, from, to, isOutside ? -1 : 1),
    ],
    ...(room === null ? {} : { titleRoom: room }),
  }
}

/** What a form is made for: a whole half, or one piece of the wood of a treble side. */
interface Formed {
  readonly half: Half
  readonly curve: Curve
  /** Arc length of the whole half at which the curve begins. */
  readonly startMm: number
  readonly start: ParallelEnd
  readonly end: ParallelEnd
  readonly isFromTail: boolean
  /** Where along the curve the word stands that says what is kept. */
  readonly keepAtMm: number
}

function formedOf(computed: Computed, line: FormLine, side: HalfName, piece: number): Formed {
  const { outline, trebleSites } = computed.geometry
  const half = halfOf(computed, side)
  const lowerMm = half.places.find(({ at }) => at.place === 'lowerBout')?.at.alongOuterMm
  const whole: Formed = {
    half,
    curve: half.curve,
    startMm: 0,
    start: 'centreline',
    end: 'centreline',
    isFromTail: true,
    keepAtMm: (lowerMm ?? half.curve.lengthMm) / 2,
  }
  if (line !== 'bendingForm' || side === 'bass' || outline.isMirrored) return whole
  const index = Math.min(Math.max(piece, 0), trebleSites.length - 1)
  const { half: curve, startMm } = trebleSites[index]!
  const isFirst = index === 0
  return {
    ...whole,
    half: {
      ...half,
      places: half.places.filter(
        ({ at: { alongOuterMm } }) => alongOuterMm >= startMm - 1e-9 && alongOuterMm <= startMm + curve.lengthMm + 1e-9,
      ),
    },
    curve,
    startMm,
    start: isFirst ? 'centreline' : 'free',
    end: index === trebleSites.length - 1 && outline.cut === null ? 'centreline' : 'free',
    isFromTail: isFirst,
    keepAtMm: isFirst ? whole.keepAtMm : curve.lengthMm / 2,
  }
}

/** Where a line begins and ends on the sheet; the body's own ends where nothing is left of it. */
function endsOf(cut: readonly PathCommand[], half: Half): readonly [Point, Point] {
  const endOf = (command: PathCommand | undefined): Point | null =>
    command === undefined || command[0] === 'Z' ? null : { x: command.at(-2) as number, y: command.at(-1) as number }
  const { places } = half.curve
  return [endOf(cut[0]) ?? onSheet(half, places[0]!.point), endOf(cut.at(-1)) ?? onSheet(half, places.at(-1)!.point)]
}

/** Marks of bouts, waist and horn across the line, on the side that is kept. */
const placeTicks = ({ half, curve, startMm }: Formed, insetMm: number, reachMm: number): Shape[] =>
  half.places.map(({ at: { alongOuterMm } }) => {
    const from = insetPoint(curve, alongOuterMm - startMm, insetMm)
    const into = inwardAt(half, alongOuterMm)
    const to = { x: from.x + reachMm * into.x, y: from.y + reachMm * into.y }
    return drawn('thin', through([onSheet(half, from), onSheet(half, to)]))
  })

/** The straight edge of a form that lies inside its line; where the line ends off the centreline, square down to it. */
function edgeInside(from: Point, to: Point): Shape[] {
  const corners = [to, { x: to.x, y: 0 }, { x: from.x, y: 0 }, from]
  return [
    drawn(
      'edge',
      through(corners.filter(({ x, y }, i) => i === 0 || x !== corners[i - 1]!.x || y !== corners[i - 1]!.y)),
    ),
  ]
}

/** A board on the inside of a piece that begins at a horn: along the centreline, and clear of the line toward the tail. */
function boardInside(half: Half, body: Bounds, from: Point, to: Point): Shape[] {
  const left = body.minX - CLEAR_MM
  const farY = half.flip * Math.max(reachOf(half, body), half.flip * from.y)
  return [
    drawn('thin', through([{ x: left, y: 0 }, { x: left, y: farY }, { x: from.x, y: farY }, from])),
    drawn('edge', through([to, { x: to.x, y: 0 }, { x: left, y: 0 }])),
  ]
}

/** A board that leaves the least clearance all round, its edge on the centreline at both ends of the line. */
function boardRound(half: Half, body: Bounds, from: Point, to: Point): Shape[] {
  const farY = half.flip * (reachOf(half, body) + CLEAR_MM)
  const [left, right] = [body.minX - CLEAR_MM, body.maxX + CLEAR_MM]
  return [
    drawn(
      'thin',
      through([
        { x: left, y: 0 },
        { x: left, y: farY },
        { x: right, y: farY },
        { x: right, y: 0 },
      ]),
    ),
    drawn('edge', through([{ x: left, y: 0 }, from])),
    drawn('edge', through([to, { x: right, y: 0 }])),
    drawn('centre', through([from, to])),
  ]
}

const reachOf = ({ flip }: Half, { minY, maxY }: Bounds): number => (flip < 0 ? -minY : maxY)

function roomOnBoard(half: Half, body: Bounds): Bounds {
  const reachMm = reachOf(half, body)
  const ys = [reachMm + TITLE_OFF_MM, reachMm + CLEAR_MM - 4].map((y) => half.flip * y)
  return { minX: body.minX, maxX: body.maxX, minY: Math.min(...ys), maxY: Math.max(...ys) }
}

function edgeXMm(
  computed: Computed,
  { half, isFromTail, curve }: Formed,
  isOutside: boolean,
  body: Bounds,
  to: Point,
): number {
  if (isOutside) return body.minX - CLEAR_MM / 2
  return isFromTail ? freeXMm(computed, half, Math.max(to.x, 0)) : curve.places.at(-1)!.point.x - CLEAR_MM
}

/** On the board outside the line; inside it where the hole of the body is, or on the board of a piece from a horn on. */
function keepAt({ numbers }: Computed, formed: Formed, isOutside: boolean, insetMm: number, body: Bounds): Point {
  const { half, curve, keepAtMm, isFromTail } = formed
  if (isOutside) return onSheet(half, insetPoint(curve, keepAtMm, insetMm - KEEP_MM))
  return isFromTail
    ? { x: numbers.soundhole.centreMm, y: half.flip * 2 * KEEP_MM }
    : { x: body.minX - CLEAR_MM / 2, y: (body.minY + body.maxY) / 2 }
}

/** On the dotted line, away from the line that is cut, halfway between two of its places: figures and other words stand at those. */
function outlineName({ half, curve, startMm }: Formed, into: 1 | -1): Shape {
  const [first, second] = half.places.map(({ at }) => at.alongOuterMm)
  const alongMm = first === undefined || second === undefined ? startMm + curve.lengthMm / 2 : (first + second) / 2
  const { x, y } = inwardAt(half, alongMm)
  const at = onSheet(half, insetPoint(curve, alongMm - startMm, into * NAME_MM))
  const away = onSheet(half, { x: into * x, y: into * y })
  return { ...label('bodyOutline', at, { x: Math.sign(away.x), y: 0 }), isOptional: false }
}

/** Which end is which, beside the centreline on the part that is kept. */
function ends({ half, start, end }: Formed, from: Point, to: Point, into: 1 | -1): Shape[] {
  const name = (word: 'tail' | 'neck', x: number, way: number) =>
    label(word, { x: x + way * 2, y: half.flip * 16 }, { x: way, y: 0 })
  return [
    ...(start === 'centreline' ? [name('tail', from.x, into)] : []),
    ...(end === 'centreline' || to.x > half.curve.places.at(-1)!.point.x - CLEAR_MM ? [name('neck', to.x, -into)] : []),
  ]
}
