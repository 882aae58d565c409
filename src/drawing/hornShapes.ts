import type { Computed } from '../core/compute.ts'
import { curveAt } from '../core/geometry/curve.ts'
import type { Bounds, Shape } from './drawing.ts'
import { ordinate, outside, running } from './dimension.ts'
import { figured } from './figured.ts'
import { arcAbout, drawn, through } from './line.ts'

const ANGLE_RADIUS_MM = 26
const NECK_ANGLE_RADIUS_MM = 22

/** What a cutaway is laid out by, on a body seen from the front: where its horn stands, its angles, and where the hollow meets the neck. */
export function hornShapes({ numbers: n, geometry }: Computed, body: Bounds, boardOnMm: number): Shape[] {
  const { cut, treble, trebleWoodEndMm } = geometry.outline
  if (cut === null || cut.hornMm === null) return []
  const horn = curveAt(treble, cut.hornMm).point
  const end = curveAt(treble, trebleWoodEndMm).point
  const rightMm = geometry.lengthMm + boardOnMm
  return [
    running(figured(n, 'cutaway.hornAtMm'), 'below', Math.max(body.maxY, 0), { x: 0, y: 0 }, horn),
    outside(figured(n, 'cutaway.hornHalfWidthMm'), 'right', rightMm, { x: horn.x, y: 0 }, horn),
    outside(figured(n, 'cutaway.runsOnMm'), 'right', rightMm, { x: end.x, y: 0 }, end),
    ...hornAngle(n, geometry),
    ...angleAtNeck(n, geometry),
  ]
}

/** Between the two sides at a pointed horn, figured inside the body beside its arc. */
function hornAngle(n: Computed['numbers'], { outline }: Computed['geometry']): Shape[] {
  const { cut, treble } = outline
  if (cut === null || cut.hornMm === null || cut.hornAngleRad === null) return []
  const { point, headingRad } = curveAt(treble, cut.hornMm)
  const middleRad = headingRad - cut.hornAngleRad / 2
  const into = { x: Math.cos(middleRad), y: Math.sin(middleRad) }
  const onArc = { x: point.x + ANGLE_RADIUS_MM * into.x, y: point.y + ANGLE_RADIUS_MM * into.y }
  return [
    drawn('dimension', arcAbout(point, ANGLE_RADIUS_MM, headingRad - cut.hornAngleRad, headingRad)),
    ordinate(figured(n, 'cutaway.hornAngleRad'), onArc, into, 1),
  ]
}

/** Between the end of the hollow and a line along the body, figured off the neck. */
function angleAtNeck(n: Computed['numbers'], { outline }: Computed['geometry']): Shape[] {
  const { cut, treble, trebleWoodEndMm } = outline
  const angleRad = cut?.angleAtNeckRad ?? null
  if (angleRad === null) return []
  const { point } = curveAt(treble, trebleWoodEndMm)
  const along = { x: point.x - NECK_ANGLE_RADIUS_MM * 1.3, y: point.y }
  const hollowRad = Math.PI - angleRad
  return [
    drawn('dimension', through([point, along])),
    drawn(
      'dimension',
      arcAbout(point, NECK_ANGLE_RADIUS_MM, Math.min(hollowRad, Math.PI), Math.max(hollowRad, Math.PI)),
    ),
    ordinate(figured(n, 'cutaway.angleAtNeckRad'), point, { x: 1, y: 1 }, 1),
  ]
}
