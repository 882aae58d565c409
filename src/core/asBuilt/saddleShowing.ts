import { curveAt } from '../geometry/curve.ts'
import type { NumberKey } from '../numbers.ts'
import { toCrownMm } from '../neckPart.ts'
import type { Reading } from './reading.ts'
import type { ShapedPlan } from './rimDepths.ts'

/** Numbers that tell how the neck came to stand over the box. */
export const HEIGHTS_OF_THE_NECK = [
  'neckSet.fretPlaneOverTopMm',
  'neckSet.fretPlaneOverTopStrungMm',
  'neckSet.fretPlaneOverBridgeMm',
  'neckSet.fretPlaneOverBridgeStrungMm',
  'neckSet.stringsOverTopMm',
  'neckSet.angleRad',
  'neckSet.angleToTopRad',
] as const satisfies readonly NumberKey[]

/**
 * How far the saddle has to show over the bridge, mm, for the action asked for, with the neck standing as it was read: the neck is set, and the
 * saddle is what can still give. The inverse of the neck set:
 *
 *   H + u = bridge + showing - a + u      a = 2 A - n; plane of the frets over the top at the saddle, u the rise under strings
 *   angle: H + u = D sin(angle) + b cos(angle) + z_neck - z_saddle
 *
 * `shape` is of a plan whose flat upper bout, if it has one, falls by a slope of its own: it is planed by then. Derived.
 */
export function saddleShowingMm({ plan, shape }: ShapedPlan, { number, value }: Reading): number {
  const { setup, bridge } = plan
  const saddleMm = setup.actionBassMm + setup.actionTrebleMm - (setup.nutBassMm + setup.nutTrebleMm) / 2
  const overBridgeMm = saddleMm - setup.riseMm
  switch (number) {
    case 'neckSet.stringsOverTopMm':
      return value - bridge.thicknessMm
    case 'neckSet.fretPlaneOverBridgeStrungMm':
      return value + saddleMm
    case 'neckSet.fretPlaneOverBridgeMm':
      return value + overBridgeMm
    case 'neckSet.fretPlaneOverTopStrungMm':
      return value - bridge.thicknessMm + saddleMm
    case 'neckSet.angleRad':
      return planeOverTopMm({ plan, shape }, value) - bridge.thicknessMm + overBridgeMm
    case 'neckSet.angleToTopRad': {
      const slope = shape.top.plate.slope(shape.placed.shape.jointMm, 0).x
      return planeOverTopMm({ plan, shape }, value - Math.atan(slope)) - bridge.thicknessMm + overBridgeMm
    }
    default:
      return value - bridge.thicknessMm + overBridgeMm
  }
}

/** The plane of the frets over the top at the saddle, of a neck at this angle to the rim plane. */
function planeOverTopMm({ plan, shape }: ShapedPlan, angleRad: number): number {
  const { bass } = shape.outline
  const toSaddleMm = toCrownMm(shape.placed)
  const atNeck = curveAt(bass, bass.lengthMm).point
  const thickMm = plan.board.thicknessMm + plan.frets.crownMm
  const edgeMm = shape.top.rim.heightMm(atNeck.x, atNeck.y)
  const topMm = shape.top.plate.heightMm(shape.placed.shape.jointMm - toSaddleMm, 0)
  return toSaddleMm * Math.sin(angleRad) + thickMm * Math.cos(angleRad) + edgeMm - topMm
}
