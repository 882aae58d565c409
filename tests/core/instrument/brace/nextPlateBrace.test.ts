import { describe, expect, it, test } from 'vitest'
import type { BracePlan } from '../../../../src/core/boxPlan.ts'
import { compute } from '../../../../src/core/compute.ts'
import { nextPlateBrace } from '../../../../src/core/instrument/brace/nextPlateBrace.ts'
import type { Plan } from '../../../../src/core/plan.ts'
import { plateSiteOf } from '../../../../src/core/plateSite.ts'
import { BRACING_PATTERNS, bracingSiteOf } from '../../../../src/record/patterns/bracings.ts'
import { planSchema } from '../../../../src/record/planSchema.ts'
import { DEMO_MODELS } from '../../../generators/demoModels.ts'
import { withBraces } from './braceSamples.ts'

const idOf = (i: number) => `b4ace000-0000-4000-8000-${String(i).padStart(12, '0')}`
const cannot = (plan: Plan) => compute(plan).findings.filter(({ weight }) => weight === 'cannot')

/** A plan with a brace more on a plate. */
function withNext(plan: Plan, plate: 'top' | 'back', id: string): Plan {
  const next = nextPlateBrace(plate, plateSiteOf(plate, plan, compute(plan)))
  const all: Record<string, BracePlan> = { ...plan.bracing.braces, [id]: { ...next, order: 'z' } }
  return { ...plan, bracing: { ...plan.bracing, braces: all } }
}

describe.each(DEMO_MODELS)('$name', ({ plan }) => {
  test.each(Object.keys(BRACING_PATTERNS.top) as (keyof typeof BRACING_PATTERNS.top)[])(
    'braces added one after the other to a top laid out as %s break nothing',
    (top) => {
      let count = 0
      const site = bracingSiteOf(plan, compute(plan).numbers)
      const laid = BRACING_PATTERNS.top[top](site, () => idOf(count++))
      let braced = withBraces(plan, Object.fromEntries(laid.map(({ id, brace }) => [id, brace])))
      const before = cannot(braced)
      for (let i = 0; i < 3; i++) {
        braced = withNext(braced, 'top', idOf(900 + i))
        expect(planSchema.safeParse(braced).success).toBe(true)
        expect(cannot(braced)).toEqual(before)
      }
    },
  )

  it('on a bare back the first runs from rim to rim, and the next ones stand clear of it', () => {
    let braced = withBraces(plan, {})
    for (let i = 0; i < 3; i++) braced = withNext(braced, 'back', idOf(i))
    expect(braced.bracing.braces[idOf(0)]).toMatchObject({ from: { stops: 'rimAt' }, to: { stops: 'rimAt' } })
    expect(cannot(braced)).toEqual(cannot(withBraces(plan, {})))
  })
})
