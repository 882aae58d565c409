import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { neckSetGauge } from '../../../src/drawing/template/neckSetGauge.ts'
import { BY_NECKS, withFields } from '../../core/everyForm.ts'
import { marchSolids } from '../../core/solids.ts'
import { DEG, expectWithin } from '../../core/within.ts'
import { DEMO_MODELS, SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { cornersOf, pathsOf, pointsOf } from './linesOf.ts'

const SPHERE = { 'top.form': 'sphere', 'bridge.compensation': 'entered' }
const PLANS: readonly (readonly [string, Plan])[] = [
  ['steel-string', withFields(STEEL_STRING.plan, SPHERE)],
  [
    'steel-string, high bridge',
    withFields(STEEL_STRING.plan, { ...SPHERE, 'bridge.thicknessMm': 12, 'setup.riseMm': 1.4 }),
  ],
  ['small', withFields(SMALL.plan, { ...SPHERE, 'top.radiusMm': 3000 })],
]
const lowestOf = (points: readonly { x: number; y: number }[]) =>
  points.reduce((low, point) => (point.y > low.y ? point : low))

describe.each(PLANS)('%s: a rigid neck turned about the joint until the foot touches the top', (_, plan) => {
  const { numbers } = compute(plan)
  const drawing = neckSetGauge(compute(plan), plan)
  const outline = pointsOf(pathsOf(drawing, 'edge')[0]!, 400)
  const L = numbers.body.lengthMm
  const { topMm } = marchSolids(plan, L, 0)
  const pivotMm = topMm(L, 0)
  const thickMm = plan.board.thicknessMm + plan.frets.crownMm
  /** A point of the gauge lying on the frets of a neck at an angle: from the tail, and over the rim plane. */
  const inBody = ({ x, y }: { x: number; y: number }, angle: number) => {
    const [along, over] = [-x, thickMm - y]
    return {
      x: L - along * Math.cos(angle) + over * Math.sin(angle),
      z: pivotMm + along * Math.sin(angle) + over * Math.cos(angle),
    }
  }
  /** The least room between the foot and the top. */
  const roomMm = (angle: number) =>
    Math.min(
      ...outline
        .filter(({ y }) => y > 1)
        .map((point) => inBody(point, angle))
        .map(({ x, z }) => z - topMm(x, 0)),
    )
  let [low, high] = [-0.2, 0.2]
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (roomMm(middle) < 0) low = middle
    else high = middle
  }
  const touchedRad = (low + high) / 2

  test('then it stands as it is to be built', () => {
    expectWithin(touchedRad / DEG, numbers.neckSet.angleRad / DEG, 0.002)
  })

  test('and the plane of the frets is as high over the top at the saddle as action, nut, bridge, saddle and rise ask', () => {
    const { actionBassMm, actionTrebleMm, nutBassMm, nutTrebleMm, riseMm } = plan.setup
    const [A, n] = [(actionBassMm + actionTrebleMm) / 2, (nutBassMm + nutTrebleMm) / 2]
    const askedMm = plan.bridge.thicknessMm + plan.bridge.saddleShowingMm - (2 * A - n) + riseMm
    const { lengthMm, jointFret } = plan.scale
    const { compensationBassMm: bass, compensationTrebleMm: treble } = plan.bridge
    const at = inBody({ x: -(lengthMm * 2 ** (-jointFret / 12) + (bass + treble) / 2), y: 0 }, touchedRad)
    expectWithin(at.z - topMm(at.x, 0), askedMm, 0.01)
  })

  test('all of the foot and of the edge before it clears the top elsewhere', () => {
    const tip = lowestOf(outline)
    const edge = outline.filter(({ y, x }) => y >= 0 && Math.abs(x - tip.x) > 4 && x < -(L - numbers.scale.boardEndMm))
    expect(edge.length).toBeGreaterThan(50)
    for (const point of edge) {
      const { x, z } = inBody(point, touchedRad)
      expect(z - topMm(x, 0)).toBeGreaterThan(0)
    }
  })
})

test.each(DEMO_MODELS.map(({ name, plan }) => [name, plan] as const))(
  '%s: it lies on nine frets before the joint, and its marks are those frets',
  (_, plan) => {
    const { scale } = plan
    const drawing = neckSetGauge(compute(plan), plan)
    const marks = drawing.shapes.flatMap((shape) => (shape.kind === 'station' ? [shape] : []))
    const before = marks.filter(({ number }) => number! < scale.jointFret)
    expect(before).toHaveLength(9)
    for (const { number, numberAt } of marks)
      expectWithin(numberAt.x, scale.lengthMm * (2 ** (-number! / 12) - 2 ** (-scale.jointFret / 12)), 1e-9)
    expectWithin(drawing.bounds.maxX - Math.max(...marks.map(({ numberAt }) => numberAt.x)), 10, 1e-6)
  },
)

test('where the plane of the frets meets the top there is no foot, and nothing is undone', () => {
  const plan = withFields(BY_NECKS[0]!, { 'setup.actionBassMm': 8, 'setup.actionTrebleMm': 8, 'bridge.thicknessMm': 3 })
  const computed = compute(plan)
  expect(computed.numbers.neckSet.fretPlaneOverTopMm).toBeLessThan(0)
  const corners = cornersOf(pathsOf(neckSetGauge(computed, plan), 'edge')[0]!)
  expect(new Set(corners.map(({ y }) => y))).toEqual(new Set([0, -50]))
})
