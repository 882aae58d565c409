import * as z from 'zod/mini'
import { READING_SIDES } from '../../core/asBuilt/reading.ts'
import { NUMBER_KEYS } from '../../core/catalogue.ts'

/** A value a number had: evidence, never recomputed. */
export const figure = z.union([z.number(), z.literal('flat'), z.literal('none')])
export const MOST_SHARING = 40
export const MOST_HOURS = 1000

const line = z.string().check(z.maxLength(120))
const sharedBy = z.int().check(z.gte(1), z.lte(MOST_SHARING))

/** What the bench adds to the facts: each takes the head every fact has. */
export function benchFacts<Head extends Record<string, z.ZodMiniType>>(head: Head) {
  return [
    /** What was measured, in the unit of its number: mm, rad. A correction points at the reading it corrects; the first stays. */
    z.strictObject({
      kind: z.literal('reading'),
      ...head,
      stageId: z.nullable(z.uuid()),
      number: z.enum(NUMBER_KEYS),
      row: z.int().check(z.gte(0), z.lte(999)),
      side: z.enum(READING_SIDES),
      value: z.number(),
      alongMm: z.nullable(z.number()),
      entry: z.nullable(z.uuid()),
      /** As it was typed, and with what it was measured; '' where that was not said. */
      typed: line,
      gauge: line,
      /** What the number was to be when it was read. */
      planned: figure,
      replaces: z.nullable(z.uuid()),
    }),
    /** Whether a reading takes the planned value's place; the last word counts. */
    z.strictObject({ kind: z.literal('readingUse'), ...head, of: z.uuid(), used: z.boolean() }),
    /** Work by the clock: shared evenly where several instruments were worked on in one go. */
    z.strictObject({
      kind: z.literal('clock'),
      ...head,
      stageId: z.uuid(),
      act: z.enum(['start', 'stop']),
      sharedBy,
    }),
    /** Work as said afterwards. */
    z.strictObject({
      kind: z.literal('hours'),
      ...head,
      stageId: z.uuid(),
      hours: z.number().check(z.gt(0), z.lte(MOST_HOURS)),
      on: z.iso.date(),
      sharedBy,
    }),
    /** A stage that was signed off goes back to the plan; what it was built to stays on record. */
    z.strictObject({
      kind: z.literal('redo'),
      ...head,
      stageId: z.uuid(),
      reason: z.string().check(z.maxLength(2000)),
    }),
    /** Work that no longer fits is kept as it was built: for these numbers, asked as they are now. */
    z.strictObject({
      kind: z.literal('kept'),
      ...head,
      stageId: z.uuid(),
      asked: z.record(z.string().check(z.maxLength(120)), figure),
    }),
  ] as const
}
