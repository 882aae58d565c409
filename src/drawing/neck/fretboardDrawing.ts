import type { Computed } from '../../core/compute.ts'
import type { CrossLine, Fretboard } from '../../core/instrument/neck/fretboard.ts'
import type { Point } from '../../core/geometry/point.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape, Station } from '../drawing.ts'
import { figured, figuredRow } from '../figured.ts'
import { circle, closed, drawn, through } from '../line.ts'

const MARKER_MM = 2.5
/** Where the count of a fanned fret stands, in parts of the half-width from the centreline. */
const COUNT_PART = 0.55
/** How far the line of the joint and the centreline stand out from the board. */
const OVER_MM = 10

/** Beyond fret 12 frets stand close: every other count goes on a second line, this many steps of air under the board. */
const SECOND_LINE = 3.4
const isStaggered = (fret: number): boolean => fret > 12 && fret % 2 === 1

type FretPlace = 'fromNutMm' | 'bassEdgeMm' | 'trebleEdgeMm'

/** Where a line across the board meets its two edges, on the sheet: bass above, treble below. */
export function edgesOf(line: CrossLine, shape: Fretboard): { readonly bass: Point; readonly treble: Point } {
  const { bassMm, trebleMm } = shape.endsOf(line)
  return {
    bass: { x: line.xMm - line.slant * bassMm, y: -bassMm },
    treble: { x: line.xMm + line.slant * trebleMm, y: trebleMm },
  }
}

/**
 * The fingerboard from above, nut to the right: its edges, every fret, strings, markers and the joint. Square frets show their place from the nut on
 * the centreline; fanned ones what is laid off at either edge, and what is measured on the centreline stands on it.
 */
export function fretboardDrawing({ numbers, geometry }: Computed): Drawing {
  const { shape, lines } = geometry.neck
  const { nutMm, endMm, jointMm } = shape
  const nut = edgesOf(shape.fretLine(0), shape)
  const end = edgesOf({ xMm: Math.min(endMm, nutMm - 1), slant: 0 }, shape)
  const joint = edgesOf({ xMm: jointMm, slant: 0 }, shape)
  const frets = numbers.frets.map((row) => edgesOf(shape.fretLine(row.number), shape))
  const shapes: Shape[] = [
    drawn('edge', closed(through([end.bass, nut.bass, nut.treble, end.treble]))),
    ...frets.map(({ bass, treble }) => drawn('thin', through([bass, treble]))),
    ...lines.map((line) => {
      const at = (xMm: number) =>
        line.nutAcrossMm + ((line.saddleAcrossMm - line.nutAcrossMm) * (line.nutMm - xMm)) / shape.scaleMm
      return drawn(
        'ghost',
        through([
          { x: end.bass.x, y: at(end.bass.x) },
          { x: line.nutMm, y: line.nutAcrossMm },
        ]),
      )
    }),
    ...numbers.markers.flatMap(({ fromNutMm, acrossMm }) =>
      (acrossMm === 'none' ? [0] : [-acrossMm, acrossMm]).map((y) =>
        drawn('thin', circle({ x: nutMm - fromNutMm, y }, MARKER_MM)),
      ),
    ),
    drawn(
      'centre',
      through([
        { x: end.bass.x - OVER_MM, y: 0 },
        { x: nutMm + OVER_MM, y: 0 },
      ]),
    ),
    drawn(
      'hidden',
      through([
        { x: jointMm, y: joint.bass.y - OVER_MM },
        { x: jointMm, y: joint.treble.y + OVER_MM },
      ]),
    ),
  ]
  const bounds = shapesBounds(shapes)
  const last = frets.length
  const isFanned = shape.bassScaleMm !== shape.trebleScaleMm
  const urgency = (i: number) => (i + 1 === 12 || i + 1 === last ? 1 : i % 2 === 1 ? 2 : 3)
  const placeAt = (key: FretPlace, i: number, at: Point, up: 1 | -1): Shape =>
    ordinate(figuredRow(`frets[].${key}`, i, numbers.frets[i]![key]), at, { x: 0, y: -up }, urgency(i), true)
  const places = frets.flatMap(({ bass, treble }, i) =>
    isFanned
      ? [
          placeAt('bassEdgeMm', i, { x: bass.x, y: bounds.minY }, 1),
          placeAt('trebleEdgeMm', i, { x: treble.x, y: bounds.maxY }, -1),
        ]
      : [placeAt('fromNutMm', i, { x: bass.x, y: bounds.minY }, 1)],
  )
  // Where places stand at both edges, the count of a fret stands on it, a little off the centreline.
  const counted = frets.map(({ treble }, i): Station => {
    const line = shape.fretLine(i + 1)
    const y = shape.halfWidthAtMm(line.xMm) * COUNT_PART
    return {
      kind: 'station',
      list: 'frets',
      row: i,
      number: i + 1,
      ticks: [],
      numberAt: isFanned ? { x: line.xMm + line.slant * y, y } : { x: treble.x, y: bounds.maxY },
      away: isFanned ? { x: 0, y: 0 } : { x: 0, y: isStaggered(i + 1) ? SECOND_LINE : 1 },
      urgency: i + 1 === 12 || i + 1 === last ? 1 : 4,
    }
  })
  // Lengths run clear of what stands under the board: two lines of counts, or figures on end.
  const lanesFree = isFanned ? 3 : 2
  const nutToJoint = figured(numbers, 'board.nutToJointMm')
  const firstMm = numbers.frets[0]?.fromNutMm ?? 0
  const toJoint = isFanned
    ? // On the centreline itself, its figure before the first fret.
      inPlace(
        nutToJoint,
        'below',
        { x: jointMm, y: 0 },
        { x: nutMm, y: 0 },
        1 - firstMm / 2 / Math.max(nutMm - jointMm, 1),
      )
    : outside(nutToJoint, 'below', bounds.maxY, joint.treble, nut.treble, lanesFree)
  return {
    name: 'fretboard',
    seenFrom: 'front',
    bounds,
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', inCorners: true },
    shapes: [
      ...shapes,
      ...places,
      ...counted,
      toJoint,
      ...(numbers.board.overBodyMm > 1
        ? [outside(figured(numbers, 'board.overBodyMm'), 'below', bounds.maxY, end.treble, joint.treble, lanesFree)]
        : []),
      outside(figured(numbers, 'board.nutWidthMm'), 'right', bounds.maxX, nut.bass, nut.treble),
      outside(figured(numbers, 'board.widthAtEndMm'), 'left', bounds.minX, end.bass, end.treble),
      label('nut', { x: nut.bass.x, y: bounds.minY }, { x: 1, y: 0 }),
    ],
  }
}
