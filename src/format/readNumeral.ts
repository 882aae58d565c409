import type Fraction from 'fraction.js'
import { type EntryReader, isTight, refuse, refuseHere, signAt } from './entryReader.ts'
import type { NumberToken } from './entryTokens.ts'
import type { BareLook } from './dialect.ts'

/** A number as it is written, before any unit. */
export type Numeral = {
  readonly value: Fraction
  readonly look: BareLook
  /** plain 98.5; fraction 7/8; mixed 3 7/8 */
  readonly form: 'plain' | 'fraction' | 'mixed'
  /** A fraction over 2, 4, 8 ... 128, as on an inch rule. */
  readonly isRuleFraction: boolean
  /** Where the hyphen of 3-7/8 stands in the text. */
  readonly hyphenAt: number | null
  readonly start: number
  readonly end: number
}

const RULE_DENOMINATORS = new Set([2, 4, 8, 16, 32, 64, 128])
export const isRuleDenominator = (token: NumberToken): boolean => RULE_DENOMINATORS.has(token.value.valueOf())

/**
 * Reads 98.5, 7/8, 3 7/8 or 3-7/8. Only a fraction below one over a rule's denominator is taken as a fraction; 392/2 and 1/3 stay
 * what they look like, divisions. Inside a product (`mayBeFraction` false) a slash always divides and a hyphen always subtracts.
 */
export function readNumeral(reader: EntryReader, mayBeFraction: boolean): Numeral | null {
  const first = wholeOrDecimalAt(reader, 0)
  if (first === null) return refuseHere(reader)
  const plain: Numeral = {
    value: first.value,
    look: !first.isWhole && first.value.lt(1) ? 'decimalBelowOne' : 'other',
    form: 'plain',
    isRuleFraction: false,
    hyphenAt: null,
    start: first.start,
    end: first.end,
  }
  reader.at += 1
  if (!first.isWhole) return plain

  const mixed = fractionAt(reader, 0)
  if (mixed !== null) {
    if (mixed.below.value.equals(0)) return refuse(reader, { code: 'divideByZero' })
    if (mixed.above.value.gte(mixed.below.value)) return refuseHere(reader)
    reader.at += 3
    return {
      ...plain,
      value: first.value.add(mixed.above.value.div(mixed.below.value)),
      form: 'mixed',
      isRuleFraction: isRuleDenominator(mixed.below),
      end: mixed.below.end,
    }
  }
  if (!mayBeFraction) return plain

  const hyphen = reader.tokens[reader.at]
  const joined = signAt(reader) === '-' && isTight(reader) ? fractionAt(reader, 1) : null
  if (hyphen !== undefined && joined !== null && isProperRule(joined) && reader.dialect.fractionUnit !== null) {
    reader.at += 4
    return {
      ...plain,
      value: first.value.add(joined.above.value.div(joined.below.value)),
      form: 'mixed',
      isRuleFraction: true,
      hyphenAt: hyphen.start,
      end: joined.below.end,
    }
  }
  const alone = fractionAt(reader, -1)
  if (alone === null || !isProperRule(alone)) return plain
  reader.at += 2
  return {
    ...plain,
    value: alone.above.value.div(alone.below.value),
    form: 'fraction',
    isRuleFraction: true,
    end: alone.below.end,
  }
}

type WrittenFraction = { readonly above: NumberToken; readonly below: NumberToken }

/** The whole number, slash and whole number that stand `ahead` of the reader, if they do. */
export function fractionAt(reader: EntryReader, ahead: number): WrittenFraction | null {
  const above = wholeOrDecimalAt(reader, ahead)
  const below = wholeOrDecimalAt(reader, ahead + 2)
  if (above === null || below === null || signAt(reader, ahead + 1) !== '/') return null
  return above.isWhole && below.isWhole ? { above, below } : null
}

const isProperRule = ({ above, below }: WrittenFraction): boolean =>
  isRuleDenominator(below) && above.value.lt(below.value)

function wholeOrDecimalAt(reader: EntryReader, ahead: number): NumberToken | null {
  const token = reader.tokens[reader.at + ahead]
  return token?.kind === 'number' ? token : null
}
