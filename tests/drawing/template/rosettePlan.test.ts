import { expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { rosettePlan } from '../../../src/drawing/template/rosettePlan.ts'
import { BY_NECKS } from '../../core/everyForm.ts'
import { DEMO_MODELS, STEEL_STRING } from '../../generators/demoModels.ts'
import { withField } from '../../generators/plans.ts'
import { pathsOf, pointsOf } from './linesOf.ts'

const PLANS = [
  ...DEMO_MODELS.map(({ name, plan }) => [name, plan] as const),
  ['with a wide cutter', withField(STEEL_STRING.plan, 'soundhole.cutterMm', 9)] as const,
  ['with a board past its middle', BY_NECKS[7]!] as const,
]

test.each(PLANS)(
  '%s: the cutter runs inside the hole by half its own width, and inside both walls of a ring',
  (_, plan) => {
    const drawing = rosettePlan(compute(plan))
    const radii = pathsOf(drawing, 'cut').map((path) => {
      const all = pointsOf(path).map(({ x, y }) => Math.hypot(x, y))
      expect(Math.max(...all) - Math.min(...all)).toBeLessThan(1e-6)
      return all[0]!
    })
    const half = plan.rosette.cutterMm / 2
    const expected = [
      plan.soundhole.radiusMm - plan.soundhole.cutterMm / 2,
      ...Object.values(plan.rosette.rings).flatMap(({ innerRadiusMm: a, outerRadiusMm: b }) =>
        b - a - 2 * half > 0.01 ? [a + half, b - half] : [a + half],
      ),
    ]
    const inOrder = (list: readonly number[]) => list.map((r) => r.toFixed(6)).toSorted()
    expect(inOrder(radii)).toEqual(inOrder(expected))
    // Hole, walls and board's end are there to be seen, not to be cut.
    expect([...pathsOf(drawing, 'edge'), ...pathsOf(drawing, 'hidden')]).toEqual([])
    expect(drawing.shapes.filter((shape) => shape.kind === 'label' && shape.word === 'grain')).toHaveLength(1)
    expect(drawing.heightsTimes).toBe(1)
  },
)
