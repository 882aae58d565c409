import { FORBIDDEN_NAMES } from './commission.ts'
import { type DoorProblem, wrongField } from './problem.ts'
import { accept, type Result, refuse } from './result.ts'

/** Far beyond any honest record, near enough to keep a hostile one from filling the memory or the stack. */
const DEEPEST = 32
const MOST_VALUES = 3_000_000

/** Passes only what JSON could hold, of bounded depth and count, without keys that reach into every object. Never recurses. */
export function guardShape(input: unknown): Result<unknown, DoorProblem> {
  const waiting: { value: unknown; depth: number }[] = [{ value: input, depth: 0 }]
  let count = 0
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, depth } = next
    count += 1
    if (count > MOST_VALUES) return refuse({ code: 'tooLarge' })
    if (typeof value !== 'object' || value === null) continue
    if (depth >= DEEPEST) return refuse({ code: 'unreadable' })
    if (count + waiting.length > MOST_VALUES) return refuse({ code: 'tooLarge' })
    for (const key of Object.keys(value)) {
      if (FORBIDDEN_NAMES.has(key)) return refuse(wrongField(key, { kind: 'unknownKey' }))
      waiting.push({ value: (value as Record<string, unknown>)[key], depth: depth + 1 })
    }
  }
  return accept(input)
}
