import type { Plan } from '../core/plan.ts'
import type { PlanField } from '../core/planFields.ts'
import { FIELDS, RING_RANGES } from './fields.ts'
import type { FieldRange } from './fieldRange.ts'

/** Whether a field of the plan can hold a value: what was measured goes no further than what could have been planned. */
export function allowsValue(field: PlanField, value: unknown): boolean {
  if (field === 'rosette.rings')
    return Object.values(value as Plan['rosette']['rings']).every(
      ({ innerRadiusMm, outerRadiusMm }) =>
        isWithin(RING_RANGES.innerRadiusMm, innerRadiusMm) && isWithin(RING_RANGES.outerRadiusMm, outerRadiusMm),
    )
  const range: FieldRange = FIELDS[field]
  return typeof value !== 'number' || isWithin(range, value)
}

function isWithin(range: FieldRange, value: number): boolean {
  switch (range.type) {
    case 'length':
      return value >= range.minMm && value <= range.maxMm
    case 'angle':
      return value >= range.minDeg && value <= range.maxDeg
    case 'count':
    case 'plain':
      return value >= range.min && value <= range.max
    default:
      return true
  }
}
