import type Fraction from 'fraction.js'
import type { BareLook, Unit } from './dialect.ts'
import { type EntryReader, isTight, refuse, rewrite, signAt, takeUnit } from './entryReader.ts'
import { fractionAt, isRuleDenominator, type Numeral, readNumeral } from './readNumeral.ts'

/**
 * What a piece of an entry comes to.
 *   bare     a number without a unit; it gets one when it is known what it is added to
 *   byHabit  a bare fraction of an inch rule, in the dialect's fraction unit unless a unit follows
 *   named    `amount` is already in the base unit (mm or degrees); `unit` is the last one named
 */
export type Value = {
  readonly basis: 'bare' | 'byHabit' | 'named'
  readonly amount: Fraction
  readonly unit: Unit | null
  readonly look: BareLook
  /** One number with one unit: behind a slash its unit belongs to the whole, as in 98.5/2 mm. */
  readonly isSingle: boolean
  readonly start: number
  readonly end: number
}

/** Reads one quantity: 98.5, 98.5 mm, 3 7/8", 14'8", 14' 8 1/2", 14'-8", 4 m 20 cm, 1°30'. */
export function readQuantity(reader: EntryReader, mayBeFraction: boolean): Value | null {
  const numeral = readNumeral(reader, mayBeFraction)
  if (numeral === null) return null
  const unitToken = takeUnit(reader)
  if (unitToken === null) return readBare(reader, numeral, mayBeFraction)
  const first: Value = {
    basis: 'named',
    amount: numeral.value.mul(unitToken.unit.size),
    unit: unitToken.unit,
    look: 'other',
    isSingle: true,
    start: numeral.start,
    end: unitToken.end,
  }
  return readSmallerUnits(reader, first)
}

function readBare(reader: EntryReader, numeral: Numeral, mayBeFraction: boolean): Value | null {
  const { value, look, start, end } = numeral
  const { fractionUnit, asksMixed } = reader.dialect
  const bare: Value = { basis: 'bare', amount: value, unit: null, look, isSingle: false, start, end }
  if (fractionUnit === null) return bare
  const shopUnit = reader.dialect.bareUnit('other')
  if (!numeral.isRuleFraction) {
    const mayBeImproper = mayBeFraction && numeral.form === 'plain' && shopUnit !== fractionUnit
    return mayBeImproper ? askImproper(reader, bare, fractionUnit, shopUnit) : bare
  }
  if (numeral.form === 'mixed' && asksMixed) {
    return ask(reader, [withUnit(reader, numeral, shopUnit), withUnit(reader, numeral, fractionUnit)])
  }
  if (numeral.hyphenAt !== null && shopUnit !== fractionUnit) {
    const apart = [
      { start: numeral.hyphenAt, end: numeral.hyphenAt + 1, by: `${shopUnit.mark} - ` },
      { start: end, end, by: fractionUnit.mark },
    ]
    return ask(reader, [withUnit(reader, numeral, fractionUnit), rewrite(reader.text, apart)])
  }
  return { ...bare, basis: 'byHabit' }
}

/** 17/16 in a metric shop: an odd number of sixteenths or finer is as likely an inch fraction as a division. */
function askImproper(reader: EntryReader, bare: Value, fractionUnit: Unit, shopUnit: Unit): Value | null {
  const written = fractionAt(reader, -1)
  if (written === null || reader.tokens[reader.at + 2]?.kind === 'unit') return bare
  const { above, below } = written
  const isOdd = above.value.mod(2).equals(1)
  if (!isOdd || !isRuleDenominator(below) || below.value.lt(16)) return bare
  const place = { start: below.end, end: below.end }
  return ask(reader, [
    rewrite(reader.text, [{ ...place, by: fractionUnit.mark }]),
    rewrite(reader.text, [{ ...place, by: shopUnit.mark }]),
  ])
}

/** Goes on from 14' to its 8", from 4 m to its 20 cm: smaller units of the same family, each once. */
function readSmallerUnits(reader: EntryReader, first: Value): Value | null {
  let whole = first
  while (whole.unit !== null) {
    const larger: Unit = whole.unit
    const isJoined = larger.below !== null && signAt(reader) === '-' && isTight(reader)
    const before = reader.at
    if (isJoined) reader.at += 1
    if (reader.tokens[reader.at]?.kind !== 'number') {
      reader.at = before
      return whole
    }
    const numeral = readNumeral(reader, true)
    if (numeral === null) return null
    const unitToken = takeUnit(reader)
    if (isJoined && unitToken !== null && unitToken.unit !== larger.below) {
      reader.at = before
      return whole
    }
    if (isJoined && unitToken === null && larger.below !== null) return askJoined(reader, whole, numeral, larger.below)
    const unit = unitToken?.unit ?? larger.below
    if (unit === null || unit.family !== larger.family || unit.size.gte(larger.size)) {
      return refuse(reader, {
        code: 'unreadable',
        at: reader.text.slice(numeral.start, unitToken?.end ?? numeral.end),
      })
    }
    whole = {
      ...whole,
      amount: whole.amount.add(numeral.value.mul(unit.size)),
      unit,
      isSingle: false,
      end: unitToken?.end ?? numeral.end,
    }
    if (unitToken === null) return whole
  }
  return whole
}

/** 14'-8 without an inch mark: feet and inches, or eight of the shop's own units less. */
function askJoined(reader: EntryReader, larger: Value, numeral: Numeral, below: Unit): null {
  const hyphen = { start: larger.end, end: larger.end + 1 }
  const behind = { start: numeral.end, end: numeral.end }
  const shopUnit = reader.dialect.bareUnit(numeral.look)
  return ask(reader, [
    rewrite(reader.text, [
      { ...hyphen, by: ' ' },
      { ...behind, by: below.mark },
    ]),
    rewrite(reader.text, [
      { ...hyphen, by: ' - ' },
      { ...behind, by: shopUnit.mark },
    ]),
  ])
}

function withUnit(reader: EntryReader, numeral: Numeral, unit: Unit): string {
  const behind = { start: numeral.end, end: numeral.end, by: unit.mark }
  if (numeral.hyphenAt === null) return rewrite(reader.text, [behind])
  return rewrite(reader.text, [{ start: numeral.hyphenAt, end: numeral.hyphenAt + 1, by: ' ' }, behind])
}

const ask = (reader: EntryReader, readings: readonly [string, string]): null =>
  refuse(reader, { code: 'ambiguous', readings })
