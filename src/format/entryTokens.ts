import type { Dialect, Unit } from './dialect.ts'
import type { EntryProblem } from './entryProblem.ts'
import { type Digits, readDigits } from './readDigits.ts'

type Place = { readonly start: number; readonly end: number }
export type NumberToken = Place & { readonly kind: 'number' } & Digits
export type UnitToken = Place & { readonly kind: 'unit'; readonly unit: Unit }
type SignToken = Place & { readonly kind: 'sign'; readonly sign: string }
export type Token = NumberToken | UnitToken | SignToken

type Tokens =
  | { readonly ok: true; readonly tokens: readonly Token[] }
  | { readonly ok: false; readonly problem: EntryProblem }

const PIECE =
  /(?<blank>\s+)|(?<run>(?:\d|[.,](?=\d))[\d.,]*)|(?<word>[a-z]+)(?:\.(?!\d))?|(?<sign>[-+*/()])|(?<other>.)/gsuy

/**
 * Cuts an entry in plain signs into numbers, units and signs, each with its place in the text. In lengths an R in front, or
 * "radius" in front or behind, is passed over. The first piece that is none of these is the problem.
 */
export function cutTokens(text: string, dialect: Dialect): Tokens {
  const tokens: Token[] = []
  for (const match of text.matchAll(PIECE)) {
    const { blank, run, word, sign, other } = match.groups ?? {}
    const start = match.index
    const end = start + match[0].length
    if (blank !== undefined) continue
    if (sign !== undefined || word === 'x') {
      tokens.push({ kind: 'sign', sign: sign ?? '*', start, end })
      continue
    }
    if (run !== undefined) {
      const digits = readDigits(run, dialect.comma)
      if (digits === null) return { ok: false, problem: { code: 'unreadable', at: run } }
      tokens.push({ kind: 'number', ...digits, start, end })
      continue
    }
    const unit = dialect.units.get(word ?? other ?? '')
    if (unit !== undefined) {
      tokens.push({ kind: 'unit', unit, start, end })
      continue
    }
    const isAtAnEnd = tokens.length === 0 ? end < text.length : end === text.length
    if (dialect.allowsRadiusMark && (word === 'r' || word === 'radius') && isAtAnEnd) continue
    return { ok: false, problem: { code: 'unreadable', at: match[0] } }
  }
  return { ok: true, tokens }
}
