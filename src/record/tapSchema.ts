import * as z from 'zod/mini'

const line = (max: number) => z.string().check(z.maxLength(max))

/** A finished box of the shop as it was heard: what part of the rigid box it sounded, under the id of its instrument. */
export const tap = z.strictObject({
  number: line(40),
  title: line(200),
  ratio: z.number().check(z.gte(0.1), z.lte(3)),
})
export type Tap = z.infer<typeof tap>

const MOST_TAPS = 500
export const taps = z.record(z.uuid(), tap).check(z.refine((all) => Object.keys(all).length <= MOST_TAPS))
