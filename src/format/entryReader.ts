import type { Dialect } from './dialect.ts'
import type { Token, UnitToken } from './entryTokens.ts'
import type { EntryProblem } from './entryProblem.ts'

/** A walk along the tokens of one entry. It ends at the first problem, which is kept; every reading function then gives null. */
export type EntryReader = {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly dialect: Dialect
  at: number
  problem: EntryProblem | null
}

/** Keeps the first problem and gives null, so that a reading function can end with it. */
export function refuse(reader: EntryReader, problem: EntryProblem): null {
  reader.problem ??= problem
  return null
}

/** Refuses the token the reader stands at, or the entry's early end. */
export function refuseHere(reader: EntryReader): null {
  const token = reader.tokens[reader.at]
  return token === undefined
    ? refuse(reader, { code: 'unfinished' })
    : refuse(reader, { code: 'unreadable', at: reader.text.slice(token.start, token.end) })
}

/** The sign at the reader's place (or `ahead` further on), if it is a sign. */
export function signAt(reader: EntryReader, ahead = 0): string | null {
  const token = reader.tokens[reader.at + ahead]
  return token?.kind === 'sign' ? token.sign : null
}

/** Takes the unit the reader stands at, if there is one. */
export function takeUnit(reader: EntryReader): UnitToken | null {
  const token = reader.tokens[reader.at]
  if (token?.kind !== 'unit') return null
  reader.at += 1
  return token
}

/** True when the sign at the reader's place has no blank on either side: the hyphen of 3-7/8. */
export function isTight(reader: EntryReader): boolean {
  const [before, sign, after] = reader.tokens.slice(reader.at - 1, reader.at + 2)
  return before !== undefined && sign !== undefined && before.end === sign.start && sign.end === after?.start
}

/** One change to the entry's text: what stands from `start` to `end` is written as `by`. */
type Rewrite = { readonly start: number; readonly end: number; readonly by: string }

/** The entry with some of its pieces written otherwise; the pieces do not overlap. */
export function rewrite(text: string, changes: readonly Rewrite[]): string {
  return changes
    .toSorted((a, b) => b.start - a.start)
    .reduce((entry, { start, end, by }) => entry.slice(0, start) + by + entry.slice(end), text)
}
