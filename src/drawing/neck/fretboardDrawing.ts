import type { Computed } from '../../core/compute.ts'
import type { CrossLine, Fretboard } from '../../core/instrument/neck/fretboard.ts'
import type { Point } from '../../core/geometry/point.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape, Station } from '../drawing.ts'
import { figured, figuredRow } from '../figured.ts'
import { circle, closed, drawn, through } from '../line.ts'

const MARKER_MM = 2.5
/** How far the line of the joint and the centreline stand out from the board. */
const OVER_MM = 10

/** Where a line across the board meets its two edges, on the sheet: bass above, treble below. */
export function edgesOf({ xMm, slant }: CrossLine, shape: Fretboard): { readonly bass: Point; readonly treble: Point } {
  const half = shape.halfWidthAtMm(xMm)
  const gain = shape.halfWidthAtMm(xMm - 1) - half
  const bassMm = half / Math.max(1 - gain * slant, 0.1)
  const trebleMm = half / Math.max(1 + gain * slant, 0.1)
  return { bass: { x: xMm - slant * bassMm, y: -bassMm }, treble: { x: xMm + slant * trebleMm, y: trebleMm } }
}

/** The fingerboard from above, nut to the right: its edges, every fret with its place from the nut, strings, markers and the joint. */
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
  const places = frets.map(({ bass }, i) =>
    ordinate(
      figuredRow('frets[].fromNutMm', i, numbers.frets[i]!.fromNutMm),
      { x: bass.x, y: bounds.minY },
      { x: 0, y: -1 },
      i + 1 === 12 || i + 1 === last ? 1 : i % 2 === 1 ? 2 : 3,
      true,
    ),
  )
  const counted = frets.map(
    ({ treble }, i): Station => ({
      kind: 'station',
      list: 'frets',
      row: i,
      number: i + 1,
      ticks: [],
      numberAt: { x: treble.x, y: bounds.maxY },
      away: { x: 0, y: 1 },
      urgency: i + 1 === 12 || i + 1 === last ? 1 : 4,
    }),
  )
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
      outside(figured(numbers, 'board.nutToJointMm'), 'below', bounds.maxY, joint.treble, nut.treble, 1),
      ...(numbers.board.overBodyMm > 1
        ? [outside(figured(numbers, 'board.overBodyMm'), 'below', bounds.maxY, end.treble, joint.treble, 1)]
        : []),
      outside(figured(numbers, 'board.nutWidthMm'), 'right', bounds.maxX, nut.bass, nut.treble),
      outside(figured(numbers, 'board.widthAtEndMm'), 'left', bounds.minX, end.bass, end.treble),
      label('nut', { x: nut.bass.x, y: bounds.minY }, { x: 1, y: 0 }),
    ],
  }
}
