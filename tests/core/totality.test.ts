import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { planSchema } from '../../src/record/planSchema.ts'
import { anyPlan, nearModel } from '../generators/plans.ts'

/** Paths at which something stands that is no finite number where one belongs. */
function unfit(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`]
  if (value === null || value === undefined) return [`${path} is ${String(value)}`]
  if (typeof value === 'string') return value === 'NaN' || value === '' ? [`${path} is '${value}'`] : []
  if (typeof value === 'object') return Object.entries(value).flatMap(([key, inner]) => unfit(inner, `${path}.${key}`))
  return []
}

function expectTotal(plan: Plan): void {
  expect(planSchema.safeParse(plan).success).toBe(true)
  const { numbers, findings } = compute(plan)
  expect(unfit(numbers, 'numbers')).toEqual([])
  expect(unfit(findings, 'findings')).toEqual([])
  if (numbers.body.halfLengthMm > 1) expect(numbers.rim.length).toBeGreaterThanOrEqual(40)
  for (const finding of findings) expect(finding.fields.length).toBeGreaterThan(0)
}

describe('a valid plan always gives finite numbers', () => {
  test('any plan within its ranges', () => {
    fc.assert(fc.property(anyPlan, expectTotal), { numRuns: 150, seed: 20261125 })
  })
  test('a model with some fields set to anything', () => {
    fc.assert(fc.property(nearModel, expectTotal), { numRuns: 300, seed: 20261125 })
  })
})

test('the same plan gives the same numbers, whatever was computed before', () => {
  fc.assert(
    fc.property(nearModel, nearModel, (one, other) => {
      const first = compute(one)
      compute(other)
      const again = compute(structuredClone(one))
      expect(JSON.stringify(again.numbers)).toBe(JSON.stringify(first.numbers))
      expect(again.findings).toEqual(first.findings)
    }),
    { numRuns: 60, seed: 7 },
  )
})
