import * as z from 'zod/mini'
import { NUMBER_KEYS } from '../core/catalogue.ts'
import { CAUTION_KEYS } from './patterns/cautions.ts'
import { STAGE_KEYS } from './patterns/stages.ts'
import { FAMILIES } from './family.ts'
import { orderKey } from './rangeSchema.ts'

export const MOST_STAGES = 200
export const MOST_STAGE_HOURS = 5000
export const MOST_TIMES = 60

const hours = z.number().check(z.gte(0), z.lte(MOST_STAGE_HOURS))
export const span = z.strictObject({ low: hours, likely: hours, high: hours })
const name = z.string().check(z.minLength(1), z.maxLength(120))
const few = 60

/** How a fixture is taken: while hands are on the stage, while it sets too, or until another stage is done. */
export const FIXTURE_HOLDS = ['working', 'setting', 'until'] as const

/** What one stage has otherwise than its pattern; what is left out is as the pattern says. */
export const ownStage = z.strictObject({
  title: z.exactOptional(name),
  /** What there is to do, in the maker's words, line by line. */
  note: z.exactOptional(z.string().check(z.maxLength(4000))),
  handsH: z.exactOptional(span),
  waitH: z.exactOptional(span),
  times: z.exactOptional(z.int().check(z.gte(1), z.lte(MOST_TIMES))),
  /** Stages of the same instrument that must be done before, by id. */
  after: z.exactOptional(z.array(z.uuid()).check(z.maxLength(few))),
  fixtures: z.exactOptional(
    z
      .array(z.strictObject({ fixture: name, held: z.enum(FIXTURE_HOLDS), until: z.nullable(z.uuid()) }))
      .check(z.maxLength(few)),
  ),
  parts: z.exactOptional(z.array(name).check(z.maxLength(few))),
  numbers: z.exactOptional(z.array(z.enum(NUMBER_KEYS)).check(z.maxLength(NUMBER_KEYS.length))),
  lookUp: z.exactOptional(z.array(z.enum(NUMBER_KEYS)).check(z.maxLength(NUMBER_KEYS.length))),
  cautions: z.exactOptional(z.array(z.enum(CAUTION_KEYS)).check(z.maxLength(few))),
  inHumidity: z.exactOptional(z.boolean()),
  oneSitting: z.exactOptional(z.boolean()),
})
export type OwnStage = z.infer<typeof ownStage>

/** One stage of this instrument's own building order. Its texts come with its key; what was done is a fact, not a field. */
export const stage = z.strictObject({
  order: orderKey,
  key: z.enum(STAGE_KEYS),
  own: z.exactOptional(ownStage),
})
export type StageEntry = z.infer<typeof stage>

export const stages = z.record(z.uuid(), stage)

/** Building orders the shop keeps for its next instruments: collections, so by id. */
export const patterns = z.record(z.uuid(), z.strictObject({ name, family: z.enum(FAMILIES), stages }))
