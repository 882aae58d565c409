import type { Computed } from '../core/compute.ts'
import { curveAt } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import { degFromRad } from '../core/units/angle.ts'
import { shapesBounds } from './bounds.ts'
import { curveCommands } from './curvePath.ts'
import { label, ordinate, stationUrgency } from './dimension.ts'
import type { Drawing, PathCommand, Shape } from './drawing.ts'
import { figured, figuredRow } from './figured.ts'
import { drawn, through } from './line.ts'
import { stationRows } from './stationRows.ts'

const MM_PER_DEG = 10
const LONGEST_MM = 90

/**
 * Bevels round the rim on the outline: a ray at each station, outward where the inner arris stands prouder, as long as the bevel is
 * wide. Both sides have the same bevels, so one half shows the back edge and the other the top edge.
 */
export function bevelsDrawing({ numbers, geometry }: Computed): Drawing {
  const { half } = geometry.outline
  const last = numbers.rim.length - 1
  const rays = (edge: 'top' | 'back'): Shape[] => {
    const flip = edge === 'back' ? 1 : -1
    const key = edge === 'back' ? 'backBevelRad' : 'topBevelRad'
    const rayEnd = (s: number, bevelRad: number): { at: Point; end: Point; away: Point } => {
      const { point, normal } = curveAt(half, s)
      const reach = Math.min(Math.max(degFromRad(bevelRad) * MM_PER_DEG, -LONGEST_MM), LONGEST_MM)
      const out = { x: normal.x, y: flip * normal.y }
      const at = { x: point.x, y: flip * point.y }
      return {
        at,
        end: { x: at.x + out.x * reach, y: at.y + out.y * reach },
        away: reach < 0 ? { x: -out.x, y: -out.y } : out,
      }
    }
    const rows = stationRows(numbers).map(({ row, at }) => ({
      row,
      bevelRad: at[key],
      ...rayEnd(at.alongOuterMm, at[key]),
    }))
    const lines = rows.flatMap(({ at, end }): PathCommand[] => [
      ['M', at.x, at.y],
      ['L', end.x, end.y],
    ])
    const figures = [
      ...numbers.places.map((row, i) => ({
        ray: rayEnd(row.alongOuterMm, row[key]),
        figure: figured(numbers, `places[].${key}`, i),
        urgency: 0,
        end: i === 0 || i === numbers.places.length - 1,
      })),
      ...rows.map(({ row, bevelRad, ...ray }) => ({
        ray,
        figure: figuredRow(`rim[].${key}`, row, bevelRad),
        urgency: stationUrgency(row, last),
        end: row === 0 || row === last,
      })),
    ]
    return [
      drawn('thin', lines),
      drawn('thin', through(rows.map(({ end }) => end))),
      ...figures
        .filter(({ end, urgency }) => urgency === 0 || !end)
        .map(({ ray, figure, urgency, end }) =>
          ordinate(figure, ray.end, end ? { x: ray.away.x, y: flip * 0.75 } : ray.away, urgency),
        ),
    ]
  }
  const shapes: Shape[] = [
    ...[false, true].map((mirrored) => drawn('edge', curveCommands(half, { mirrored }))),
    drawn(
      'centre',
      through([
        { x: -30, y: 0 },
        { x: geometry.lengthMm + 30, y: 0 },
      ]),
    ),
    ...rays('top'),
    ...rays('back'),
  ]
  const middle = curveAt(half, geometry.bouts.lowerBoutMm).point
  return {
    name: 'bevels',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      label('topBevelBothSides', { x: middle.x + 30, y: -middle.y * 0.4 }, { x: 0, y: 0 }),
      label('backBevelBothSides', { x: middle.x + 30, y: middle.y * 0.4 }, { x: 0, y: 0 }),
    ],
  }
}
