import type { Computed } from '../../core/compute.ts'
import type { Plan } from '../../core/plan.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, ordinate } from '../dimension.ts'
import type { Drawing, PathCommand, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { closed, drawn, through } from '../line.ts'

const DEPTH_MM = 50
/** How many frets before the joint it lies on, and how far it runs on past the last of them and past the foot. */
const FRETS_BEFORE_JOINT = 9
const PAST_FRET_MM = 10
const PAST_FOOT_MM = 26
/** The foot: half its width where it leaves the edge, and the radius of its tip. */
const FOOT_HALF_MM = 8
const TIP_MM = 2
const TICK_MM = 5
const LENGTH_AT_MM = 21

/**
 * A straightedge with a foot, seen from the side in the plane of the centreline, neck to the right: it lies on the frets up to the joint, its mark
 * there over the joint's, and its foot just touches the top where the saddle will stand when the neck is set as built, before stringing. Places
 * run along the neck from the joint, as the neck set is worked out.
 *
 *   foot under the edge = H cos(angle), its tip H sin(angle) nearer the neck than the saddle's place      H plane of the frets over the top, upright
 *
 * The tip is round: a top that leans to the edge by 3 degrees is touched 0.003 mm early. No foot where the plane of the frets meets the top.
 * Source: derived.
 */
export function neckSetGauge({ numbers, geometry }: Computed, plan: Pick<Plan, 'scale'>): Drawing {
  const { shape } = geometry.neck
  const { neckSet, bridge } = numbers
  const along = (fret: number) => shape.fretLine(fret).xMm - shape.jointMm
  const endX = along(Math.max(plan.scale.jointFret - FRETS_BEFORE_JOINT, 0)) + PAST_FRET_MM
  const saddleX = -bridge.jointToSaddleMm
  const tailX = Math.min(saddleX, endX) - PAST_FOOT_MM
  const upright = neckSet.fretPlaneOverTopMm
  const footMm = upright * Math.cos(neckSet.angleRad)
  const tipX = saddleX + upright * Math.sin(neckSet.angleRad)
  const onGauge = numbers.frets.flatMap(({ number }, i) => {
    const x = along(number)
    return x > saddleX + FOOT_HALF_MM && x < endX ? [{ x, number, i }] : []
  })
  const shapes: Shape[] = [
    drawn(
      'edge',
      closed([['M', endX, 0], ...foot(tipX, footMm), ['L', tailX, 0], ['L', tailX, -DEPTH_MM], ['L', endX, -DEPTH_MM]]),
    ),
    ...[0, saddleX].map((x) =>
      drawn(
        'thin',
        through([
          { x, y: 0 },
          { x, y: -TICK_MM },
        ]),
      ),
    ),
  ]
  const word = (one: 'joint' | 'saddle' | 'fretPlane' | 'referenceEdge', x: number, y: number): Shape => ({
    ...label(one, { x, y }, { x: 0, y: -1 }),
    isOptional: false,
  })
  return {
    name: 'neckSetGauge',
    seenFrom: 'section',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      ...onGauge.map(
        ({ x, number, i }): Shape => ({
          kind: 'station',
          list: 'frets',
          row: i,
          number,
          ticks: Math.abs(x) < 1e-6 ? [] : [{ from: { x, y: 0 }, to: { x, y: -TICK_MM } }],
          numberAt: { x, y: -TICK_MM },
          away: { x: 0, y: -1 },
          urgency: number === plan.scale.jointFret ? 0 : 2,
        }),
      ),
      inPlace(
        figured(numbers, 'bridge.jointToSaddleMm'),
        'above',
        { x: saddleX, y: -LENGTH_AT_MM },
        { x: 0, y: -LENGTH_AT_MM },
      ),
      ordinate(
        figured(numbers, 'neckSet.fretPlaneOverTopMm'),
        { x: tipX - FOOT_HALF_MM, y: footMm / 2 },
        { x: -1, y: 0 },
        0,
      ),
      word('joint', 0, -TICK_MM - 4),
      word('saddle', saddleX, -TICK_MM),
      word('referenceEdge', 0.78 * saddleX, 0),
      word('fretPlane', 0.55 * saddleX, 0),
    ],
    titleRoom: { minX: tailX + 2, maxX: endX - 2, minY: 2 - DEPTH_MM, maxY: -LENGTH_AT_MM - 3 },
  }
}

/** The lower edge round the foot, from neck to tail. */
function foot(tipX: number, footMm: number): PathCommand[] {
  const tipMm = Math.min(TIP_MM, footMm / 2)
  if (tipMm <= 0) return []
  return [
    ['L', tipX + FOOT_HALF_MM, 0],
    ['L', tipX + tipMm, footMm - tipMm],
    ['A', tipMm, 0, 1, tipX - tipMm, footMm - tipMm],
    ['L', tipX - FOOT_HALF_MM, 0],
  ]
}
