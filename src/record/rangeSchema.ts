import * as z from 'zod/mini'
import type { PlanField } from '../core/planFields.ts'
import { FIELDS } from './fields.ts'
import type { FieldRange } from './fieldRange.ts'
import { MISSING } from './problem.ts'

/** Sentences are words' own, so no language is loaded: only what is not there at all has to be told from what is wrong. */
z.config({
  jitless: true,
  customError: ({ code, input }) => (code === 'invalid_type' && input === undefined ? MISSING : undefined),
})

/** Entries of a collection come and go one by one, so each has a uuid and an order string. */
export const orderKey = z.string().check(z.minLength(1), z.maxLength(40), z.regex(/^[0-9a-z]+$/))

/** A finite number between two ends, both included. */
export const finite = (min: number, max: number) => z.number().check(z.gte(min), z.lte(max))

/** What a range lets stand; choices and wholes have schemas of their own. */
export function number(range: FieldRange) {
  if (range.type === 'length') return finite(range.minMm, range.maxMm)
  if (range.type === 'angle') return finite(range.minDeg, range.maxDeg)
  if (range.type === 'count') return z.int().check(z.gte(range.min), z.lte(range.max))
  if (range.type === 'plain') return finite(range.min, range.max)
  throw new Error('not a number field')
}

/** The value of a field of the plan, the same where it may be left open, and where it may be flat besides. */
export const at = (field: PlanField) => number(FIELDS[field])
export const openAt = (field: PlanField) => z.nullable(at(field))
export const radiusAt = (field: PlanField) => z.nullable(z.union([at(field), z.literal('flat')]))
