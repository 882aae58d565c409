import { describe, expect, test } from 'vitest'
import { innerRimOf } from '../../../../src/core/instrument/brace/innerRim.ts'
import { bracesBehind, bracesInOrder, placeBraces } from '../../../../src/core/instrument/brace/placedBrace.ts'
import { drawOutline } from '../../../../src/core/instrument/outline.ts'
import { SMALL, STEEL_STRING } from '../../../generators/demoModels.ts'
import { BY_BRACES } from '../../bracedPlans.ts'
import { atBrace, beyond, brace } from './braceSamples.ts'

const PLANS = [STEEL_STRING.plan, SMALL.plan, ...BY_BRACES]

describe('the braces that decide where one stands', () => {
  test.each(PLANS.map((plan, i) => [i, plan] as const))('place it as all together do: plan %i', (_, plan) => {
    const rim = innerRimOf(drawOutline(plan.outline), plan.rim.sideThicknessMm)
    const entries = bracesInOrder(plan.bracing.braces)
    const all = placeBraces(entries, rim)
    expect(all.length).toBeGreaterThan(0)
    for (const { id } of entries) {
      const [few, whole] = [placeBraces(bracesBehind(entries, id), rim), all].map((placed) =>
        placed
          .filter((one) => one.id === id)
          .map(({ half, lengthMm, from, to, corners }) => ({
            half,
            lengthMm,
            from: from.point,
            to: to.point,
            corners,
          })),
      )
      expect(few).toEqual(whole)
    }
  })

  test('are itself, what it stops at, and what that stops at; in a ring each once; none where it is not known', () => {
    const entries = bracesInOrder({
      a: brace(beyond(100, -20), beyond(110, 20)),
      b: brace(beyond(200, -20), atBrace('a', 110, 0)),
      c: brace(beyond(300, -20), atBrace('b', 150, 0)),
      d: brace(beyond(310, -20), atBrace('e', 150, 0)),
      e: brace(beyond(320, -20), atBrace('d', 150, 0)),
    })
    const behind = (id: string) => bracesBehind(entries, id).map((one) => one.id)
    expect(behind('a')).toEqual(['a'])
    expect(behind('c')).toEqual(['a', 'b', 'c'])
    expect(behind('d')).toEqual(['d', 'e'])
    expect(behind('nowhere')).toEqual([])
  })
})
