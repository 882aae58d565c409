import { z } from 'zod'
import type { PlanField } from '../core/planFields.ts'
import { FIELDS, type FieldRange } from './fields.ts'

z.config({ jitless: true })

/** Entries of a collection come and go one by one, so each has a uuid and an order string. */
export const orderKey = z
  .string()
  .min(1)
  .max(40)
  .regex(/^[0-9a-z]+$/)

/** A finite number between two ends, both included. */
export const finite = (min: number, max: number) => z.number().min(min).max(max)

/** What a range lets stand; choices and wholes have schemas of their own. */
export function number(range: FieldRange) {
  if (range.type === 'length') return finite(range.minMm, range.maxMm)
  if (range.type === 'angle') return finite(range.minDeg, range.maxDeg)
  if (range.type === 'count') return z.int().min(range.min).max(range.max)
  if (range.type === 'plain') return finite(range.min, range.max)
  throw new Error('not a number field')
}

/** The value of a field of the plan, the same where it may be left open, and where it may be flat besides. */
export const at = (field: PlanField) => number(FIELDS[field])
export const openAt = (field: PlanField) => at(field).nullable()
export const radiusAt = (field: PlanField) => z.union([at(field), z.literal('flat')]).nullable()
