import { z } from 'zod'
import { FAMILIES } from './commission.ts'
import { planSchema } from './planSchema.ts'
import { type DoorProblem, problemOfIssues } from './problem.ts'
import { accept, type Result, refuse } from './result.ts'

const houseModel = z.strictObject({ name: z.string().min(1).max(200), family: z.enum(FAMILIES), plan: planSchema })

/** A model of the house: what an instrument can be begun from. */
export type HouseModel = z.infer<typeof houseModel>

/** A model as it comes with the program, unknown until here. */
export function readHouseModel(input: unknown): Result<HouseModel, DoorProblem> {
  const read = houseModel.safeParse(input)
  return read.success ? accept(read.data) : refuse(problemOfIssues(read.error.issues))
}
