import { asBuilt } from '../core/asBuilt.ts'
import { compute } from '../core/compute.ts'
import { parseCommissionText } from '../files/commissionFile.ts'
import { allowsValue } from '../record/allowsValue.ts'
import { readingsInUse } from '../record/bench/measured.ts'
import { readCommissionFile } from '../record/door.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { doorSentence } from '../words/doorProblem.ts'

/**
 * Every number of a saved commission with what was measured in the place of what was planned, and its findings, as JSON text. Refused with ONE line that names the field, for a file the door does not
 * let in; and, since JSON would hide it as null, for a number that is none.
 */
export function writeNumbers(text: string): Result<string, string> {
  const parsed = parseCommissionText(text)
  if (!parsed.ok) return refuse(doorSentence(parsed.problem))
  const read = readCommissionFile(parsed.value)
  if (!read.ok) return refuse(doorSentence(read.problem))
  const { plan } = asBuilt(read.value.plan, readingsInUse(read.value.facts), allowsValue)
  const { numbers, findings } = compute(plan)
  const all = { ...numbers, findings }
  const unfit = findUnfit(all, '')
  return unfit === null
    ? accept(JSON.stringify(all, null, 2))
    : refuse(`The number “${unfit}” came out as none: a fault of this program.`)
}

/** The path of the first value that is no number where one belongs. */
export function findUnfit(value: unknown, path: string): string | null {
  if (value === null || value === undefined || (typeof value === 'number' && !Number.isFinite(value))) return path
  if (typeof value !== 'object') return null
  for (const [key, inner] of Object.entries(value)) {
    const found = findUnfit(inner, path === '' ? key : `${path}.${key}`)
    if (found !== null) return found
  }
  return null
}
