import * as z from 'zod/mini'
import { FAMILIES } from './family.ts'
import { planSchema } from './planSchema.ts'
import { type DoorProblem, problemOfIssues } from './problem.ts'
import { accept, type Result, refuse } from './result.ts'

/** A model of the house: what an instrument can be begun from. */
export const modelDoc = z.strictObject({
  name: z.string().check(z.maxLength(200)),
  family: z.enum(FAMILIES),
  /** Came with the program, and stays as it came until it is changed. */
  demo: z.boolean(),
  plan: planSchema,
})
export type ModelDoc = z.infer<typeof modelDoc>

const packedModel = z.strictObject({
  id: z.uuid(),
  name: z.string().check(z.minLength(1), z.maxLength(200)),
  family: z.enum(FAMILIES),
  plan: planSchema,
})

/** A model as it comes with the program: under an id of its own, the same on every device. */
export type PackedModel = z.infer<typeof packedModel>

/** A model as it comes with the program, unknown until here. */
export function readPackedModel(input: unknown): Result<PackedModel, DoorProblem> {
  const read = packedModel.safeParse(input)
  return read.success ? accept(read.data) : refuse(problemOfIssues(read.error.issues))
}
