import { expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { rosettePlan } from '../../../src/drawing/template/rosettePlan.ts'
import { BY_NECKS } from '../../core/everyForm.ts'
import { DEMO_MODELS, STEEL_STRING } from '../../generators/demoModels.ts'
import { withField } from '../../generators/plans.ts'
import { cornersOf, pathsOf, pointsOf } from './linesOf.ts'

const near = (a: number, b: number) => Math.abs(a - b) < 1e-6

const PLANS = [
  ...DEMO_MODELS.map(({ name, plan }) => [name, plan] as const),
  ['with a wide cutter', withField(STEEL_STRING.plan, 'soundhole.cutterMm', 9)] as const,
  ['with a board past its middle', BY_NECKS[7]!] as const,
]

test.each(PLANS)(
  '%s: cut are the hole and both walls of a ring; dashed, the cutter runs inside each by half its own width',
  (_, plan) => {
    const drawing = rosettePlan(compute(plan))
    const radiiOf = (role: 'cut' | 'hidden') =>
      pathsOf(drawing, role)
        .filter(({ commands }) => commands.some(([step]) => step === 'A'))
        .map((path) => {
          const all = pointsOf(path).map(({ x, y }) => Math.hypot(x, y))
          expect(Math.max(...all) - Math.min(...all)).toBeLessThan(1e-6)
          return all[0]!
        })
    const half = plan.rosette.cutterMm / 2
    const walls = [
      plan.soundhole.radiusMm,
      ...Object.values(plan.rosette.rings).flatMap(({ innerRadiusMm, outerRadiusMm }) => [
        innerRadiusMm,
        outerRadiusMm,
      ]),
    ]
    const expected = [
      plan.soundhole.radiusMm - plan.soundhole.cutterMm / 2,
      ...Object.values(plan.rosette.rings).flatMap(({ innerRadiusMm: a, outerRadiusMm: b }) =>
        b - a - 2 * half > 0.01 ? [a + half, b - half] : [a + half],
      ),
    ]
    const inOrder = (list: readonly number[]) => list.map((r) => r.toFixed(6)).toSorted()
    expect(inOrder(radiiOf('cut'))).toEqual(inOrder(walls))
    expect(inOrder(radiiOf('hidden'))).toEqual(inOrder(expected))
    // What else is cut ends a channel: straight, from one of its walls to the other. The board's end is there to be seen.
    for (const path of pathsOf(drawing, 'cut').filter(({ commands }) => commands.every(([step]) => step !== 'A'))) {
      const [a, b] = cornersOf(path).map(({ x, y }) => Math.hypot(x, y))
      expect(
        Object.values(plan.rosette.rings).some((ring) => near(a!, ring.innerRadiusMm) && near(b!, ring.outerRadiusMm)),
      ).toBe(true)
    }
    expect(pathsOf(drawing, 'edge')).toEqual([])
    expect(drawing.shapes.filter((shape) => shape.kind === 'label' && shape.word === 'grain')).toHaveLength(1)
    expect(drawing.heightsTimes).toBe(1)
  },
)
