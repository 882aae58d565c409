import type { NumberKey } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import { inverseOf } from './inverses.ts'

/**
 * Which readings are turned into fields together with those of this number: all with the same answer are one round. A number that is itself a
 * field is a round of its own. null: a reading of it defines nothing on this plan and is kept for the record only.
 */
export function roundOf(number: NumberKey, plan: Plan): string | null {
  const inverse = inverseOf(number, plan)
  if (inverse === null) return null
  const isAlone = inverse.name === 'itself' || inverse.name === 'degrees'
  return isAlone ? `${inverse.name} ${number}` : inverse.name
}
