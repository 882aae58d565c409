import { placeName } from '../words/places.ts'
import { type AnyProblem, problemSentence } from '../words/problems.ts'

/** Why an instrument was not opened, in words; they name fields, so they come only when they are needed. */
export function RefusedReason({ problem }: { readonly problem: AnyProblem }) {
  return <>{problemSentence(problem, { placeName })}</>
}
