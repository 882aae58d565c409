import * as z from 'zod/mini'
import type { Fixture } from '../core/fixture.ts'
import { FIXTURE_RANGES, MOST_FIXTURES } from './fields.ts'
import { outlineSchema } from './outlineSchema.ts'
import { number, orderKey } from './rangeSchema.ts'

const named = { order: orderKey, name: z.string().check(z.maxLength(200)) }

export const fixture = z.discriminatedUnion('kind', [
  z.strictObject({
    ...named,
    kind: z.literal('contourBoard'),
    radiusMm: z.union([number(FIXTURE_RANGES.boardRadiusMm), z.literal('flat')]),
  }),
  z.strictObject({
    ...named,
    kind: z.literal('dish'),
    radiusMm: number(FIXTURE_RANGES.dishRadiusMm),
    diameterMm: number(FIXTURE_RANGES.dishDiameterMm),
  }),
  z.strictObject({ ...named, kind: z.literal('mould'), outline: outlineSchema }),
  z.strictObject({
    ...named,
    kind: z.literal('bendingForm'),
    outline: outlineSchema,
    insetMm: number(FIXTURE_RANGES.insetMm),
  }),
]) satisfies z.ZodMiniType<Fixture>

/** The fixtures of a shop: a collection, so by id. */
export const fixtures = z.record(z.uuid(), fixture).check(z.refine((all) => Object.keys(all).length <= MOST_FIXTURES))
