import type { Dialect } from './dialect.ts'
import type { EntryProblem } from './entryProblem.ts'
import { type EntryReader, refuseHere, rewrite } from './entryReader.ts'
import { cutTokens } from './entryTokens.ts'
import { plainSigns } from './plainSigns.ts'
import { readSum, settle } from './readSum.ts'

type ParsedEntry =
  | { readonly ok: true; readonly amount: number }
  | { readonly ok: false; readonly problem: EntryProblem }

const MAX_CHARACTERS = 200
const MAX_AMOUNT = 1e9

/**
 * What a typed entry comes to in its dialect's base unit (mm, degrees, pieces), summed in exact fractions and rounded once, to the
 * nearest double. Never throws; a long entry is refused before it is read, so every entry is answered at once.
 */
export function parseEntry(typed: string, dialect: Dialect): ParsedEntry {
  if (typed.length > MAX_CHARACTERS) return failed({ code: 'tooLong', limit: MAX_CHARACTERS })
  const text = plainSigns(typed)
  if (text === '') return failed({ code: 'empty' })
  const cut = cutTokens(text, dialect)
  if (!cut.ok) return cut
  const reader: EntryReader = { text, tokens: cut.tokens, dialect, at: 0, problem: null }
  const value = readSum(reader)
  if (value !== null && reader.at < reader.tokens.length) refuseHere(reader)
  const amount = value === null || reader.problem !== null ? null : settle(reader, value)
  if (reader.problem !== null && reader.problem.code !== 'ambiguous') return failed(reader.problem)
  const spellings = askedSpellings(reader)
  if (spellings !== null) return failed({ code: 'ambiguous', readings: spellings })
  if (amount === null) return failed(reader.problem ?? { code: 'unreadable', at: text })
  const rounded = amount.valueOf() + 0
  if (!(Math.abs(rounded) <= MAX_AMOUNT)) return failed({ code: 'tooLarge', limit: MAX_AMOUNT })
  return { ok: true, amount: rounded }
}

/** The entry with every doubtful comma read as a decimal sign, and with every one read as setting off thousands. */
function askedSpellings({ text, tokens }: EntryReader): readonly [string, string] | null {
  const asked = tokens.flatMap((token) => (token.kind === 'number' && token.choices !== null ? [token] : []))
  if (asked.length === 0) return null
  const spelt = (choice: 0 | 1) =>
    rewrite(
      text,
      asked.map(({ start, end, choices }) => ({ start, end, by: choices?.[choice] ?? '' })),
    )
  return [spelt(0), spelt(1)]
}

const failed = (problem: EntryProblem): ParsedEntry => ({ ok: false, problem })
