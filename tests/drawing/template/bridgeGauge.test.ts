import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { asHanded } from '../../../src/drawing/handed.ts'
import { bridgeGauge } from '../../../src/drawing/template/bridgeGauge.ts'
import { BY_NECKS, withFields } from '../../core/everyForm.ts'
import { expectWithin } from '../../core/within.ts'
import { DEMO_MODELS, STEEL_STRING } from '../../generators/demoModels.ts'
import { cornersOf, pathsOf, pointsOf } from './linesOf.ts'

const MODELS = DEMO_MODELS.map(
  ({ name, plan }) => [name, withFields(plan, { 'bridge.compensation': 'entered' })] as const,
)

describe.each(MODELS)('%s, walked from fret to fret', (_, plan) => {
  const drawing = bridgeGauge(compute(plan), plan)
  const [slot] = pathsOf(drawing, 'cut')
  const stem = Math.max(...cornersOf(pathsOf(drawing, 'edge')[0]!).map(({ x }) => x))
  const { lengthMm: S, frets, jointFret } = plan.scale
  const { compensationBassMm: bass, compensationTrebleMm: treble, saddleFromFrontMm, lengthMm } = plan.bridge

  test('from the end of the board to the front edge of the bridge', () => {
    // The last fret's share of the scale is still before the board's end, less what the board runs on; the bridge stands behind it with its saddle set back.
    let left = S
    for (let fret = 1; fret <= frets; fret++) left /= 2 ** (1 / 12)
    const endToSaddle = left - plan.board.endBeyondLastFretMm + (bass + treble) / 2
    const front = cornersOf(slot!)[1]!.x
    expectWithin(stem - front, endToSaddle - saddleFromFrontMm, 1e-9)
  })

  test('its outer walls are the bridge’s front edge and both ends, square to the centreline and about it', () => {
    const [tail, a, b, other] = cornersOf(slot!)
    expect([a!.x, a!.y, b!.y]).toEqual([b!.x, -lengthMm / 2, lengthMm / 2])
    expect([tail!.y, other!.y]).toEqual([a!.y, b!.y])
    expectWithin(a!.x - tail!.x, plan.bridge.widthMm, 1e-9)
    expectWithin(b!.x - other!.x, plan.bridge.widthMm, 1e-9)
  })

  test('the slot is one closed line, 2 mm wide all round, and the back edge is scored from one of its ends to the other', () => {
    expect(pathsOf(drawing, 'cut')).toHaveLength(1)
    expect(slot!.commands.at(-1)).toEqual(['Z'])
    // By its area: a strip of that width along three sides, its two corners counted once.
    const corners = cornersOf(slot!)
    const area = corners.reduce((sum, p, i) => {
      const q = corners[(i + 1) % corners.length]!
      return sum + (p.x * q.y - q.x * p.y) / 2
    }, 0)
    expectWithin(Math.abs(area), 2 * (lengthMm + 2 * plan.bridge.widthMm) - 2 * 2 ** 2, 1e-6)
    const [back] = pathsOf(drawing, 'slot')
    const [from, to] = cornersOf(back!)
    expect([from!.x, to!.x]).toEqual([corners[0]!.x, corners[3]!.x])
    expectWithin(to!.y - from!.y, lengthMm - 4, 1e-9)
  })

  test('the crowns of the outer strings stand behind the uncompensated line by their compensation', () => {
    const joint = compute(plan).numbers.body.lengthMm
    const line = joint - S / 2 ** (jointFret / 12)
    const crowns = pathsOf(drawing, 'thin')
      .filter(({ commands }) => commands.some(([step]) => step === 'A'))
      .map((circle) => {
        const points = pointsOf(circle)
        const mean = (of: 'x' | 'y') =>
          (Math.max(...points.map((p) => p[of])) + Math.min(...points.map((p) => p[of]))) / 2
        return { x: mean('x'), y: mean('y') }
      })
    expect(crowns).toHaveLength(2)
    const spread = plan.strings.saddleSpreadMm
    for (const [i, [x, y]] of [[line - bass, -spread / 2] as const, [line - treble, spread / 2] as const].entries()) {
      expectWithin(crowns[i]!.x, x, 1e-3)
      expectWithin(crowns[i]!.y, y, 1e-3)
    }
  })
})

test('the figures at its places are told from the joint, and differ as the places do', () => {
  const plan = STEEL_STRING.plan
  const computed = compute(plan)
  const figures = bridgeGauge(computed, plan).shapes.flatMap((shape) => (shape.kind === 'ordinate' ? [shape] : []))
  expect(figures).toHaveLength(3)
  for (const { at, figured } of figures) {
    const aslant = figured.key === 'bridge.jointToSaddleMm' ? Math.abs(at.y) * 0.2 : 0
    expectWithin(computed.numbers.body.lengthMm - at.x, Number(figured.value), 1e-9 + aslant, figured.key)
  }
})

test('for the left hand the saddle leans the other way, and bass and treble change sides', () => {
  const plan = STEEL_STRING.plan
  const [right, left] = (['right', 'left'] as const).map((hand) => asHanded(bridgeGauge(compute(plan), plan), hand))
  const lean = (drawing: typeof right) => {
    const [saddle] = pathsOf(drawing!, 'thin')
    const [a, b] = cornersOf(saddle!)
    return (b!.x - a!.x) / (b!.y - a!.y)
  }
  expect(lean(right)).toBeGreaterThan(0)
  expectWithin(lean(left), -lean(right), 1e-12)
  expect([right!.marks.top, left!.marks.top]).toEqual(['bass', 'treble'])
})

test('however near the board ends, its outline never turns inside out', () => {
  for (const plan of [...BY_NECKS, withFields(STEEL_STRING.plan, { 'board.endBeyondLastFretMm': 400 })]) {
    const drawing = bridgeGauge(compute(plan), plan)
    const xs = cornersOf(pathsOf(drawing, 'edge')[0]!).map(({ x }) => x)
    const front = cornersOf(pathsOf(drawing, 'cut')[0]!)[1]!.x
    expect(Math.max(...xs)).toBeGreaterThan(xs[2]!)
    expect(xs[2]).toBeGreaterThan(front)
    expect(Math.min(...xs)).toBeLessThan(front - plan.bridge.widthMm)
  }
})
