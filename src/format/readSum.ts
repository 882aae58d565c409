import Fraction from 'fraction.js'
import type { Unit } from './dialect.ts'
import { type EntryReader, refuse, refuseHere, rewrite, signAt, takeUnit } from './entryReader.ts'
import { readQuantity, type Value } from './readQuantity.ts'

/** Reads terms added and subtracted, up to a closing bracket or the end. */
export function readSum(reader: EntryReader): Value | null {
  const first = readTerm(reader)
  if (first === null) return null
  const terms = [first]
  for (let sign = signAt(reader); sign === '+' || sign === '-'; sign = signAt(reader)) {
    reader.at += 1
    const term = readTerm(reader)
    if (term === null) return null
    terms.push(sign === '-' ? { ...term, amount: term.amount.neg() } : term)
  }
  return addUp(reader, terms)
}

/** A value in mm or degrees; what has no unit yet takes the shop's, or the inch of a rule's fraction. */
export function settle(reader: EntryReader, value: Value): Fraction | null {
  const unit = unitOf(reader, value)
  if (unit === null) return null
  return value.basis === 'named' ? value.amount : value.amount.mul(unit.size)
}

/**
 * In a sum a bare number takes the shop's unit only when everything beside it is in that unit too; otherwise (3" + 2 in a shop of
 * millimetres) both readings are given back.
 */
function addUp(reader: EntryReader, terms: readonly Value[]): Value | null {
  const [first] = terms
  if (first === undefined || terms.length === 1) return first ?? null
  const units: Unit[] = []
  for (const term of terms) {
    const unit = unitOf(reader, term)
    if (unit === null) return null
    units.push(unit)
  }
  const place = { start: first.start, end: terms.at(-1)?.end ?? first.end, isSingle: false }
  const sumOf = (amounts: readonly Fraction[]) => amounts.reduce((sum, amount) => sum.add(amount), new Fraction(0))
  const isOneUnit = units.every((unit) => unit === units[0])
  if (isOneUnit && first.basis !== 'named' && terms.every((term) => term.basis === first.basis)) {
    return { ...first, ...place, amount: sumOf(terms.map((term) => term.amount)) }
  }
  if (!isOneUnit && terms.some((term) => term.basis === 'bare')) return askWhichUnit(reader, terms, units)
  const amounts = terms.map((term, i) => (term.basis === 'named' ? term.amount : term.amount.mul(units[i]?.size ?? 1)))
  return { ...first, ...place, basis: 'named', amount: sumOf(amounts), unit: units.at(-1) ?? null }
}

function askWhichUnit(reader: EntryReader, terms: readonly Value[], units: readonly Unit[]): null {
  const bareUnits = units.filter((_, i) => terms[i]?.basis === 'bare')
  const other = units.find((unit, i) => terms[i]?.basis !== 'bare' && !bareUnits.includes(unit)) ?? units[0]
  const marked = (pick: (own: Unit) => Unit) =>
    rewrite(
      reader.text,
      terms.flatMap((term, i) => {
        const own = units[i]
        return term.basis === 'bare' && own ? [{ start: term.end, end: term.end, by: pick(own).mark }] : []
      }),
    )
  return refuse(reader, { code: 'ambiguous', readings: [marked((own) => own), marked((own) => other ?? own)] })
}

function unitOf(reader: EntryReader, value: Value): Unit | null {
  const { bareUnit, fractionUnit } = reader.dialect
  if (value.basis === 'named') return value.unit
  if (value.basis === 'byHabit') return fractionUnit
  const small = bareUnit('decimalBelowOne')
  const usual = bareUnit('other')
  if (value.look !== 'both' || small === usual) return bareUnit(value.look)
  const readAs = (unit: Unit) => rewrite(reader.text, [{ start: value.end, end: value.end, by: unit.mark }])
  return refuse(reader, { code: 'ambiguous', readings: [readAs(usual), readAs(small)] })
}

function readTerm(reader: EntryReader): Value | null {
  let product = readFactor(reader, true)
  for (let sign = signAt(reader); product !== null && (sign === '*' || sign === '/'); sign = signAt(reader)) {
    reader.at += 1
    const factor = readFactor(reader, false)
    if (factor === null) return null
    product = sign === '*' ? multiply(reader, product, factor) : divide(reader, product, factor)
  }
  return product
}

function readFactor(reader: EntryReader, mayBeFraction: boolean): Value | null {
  const start = reader.tokens[reader.at]?.start ?? reader.text.length
  const sign = signAt(reader)
  if (sign === '-' || sign === '+') {
    reader.at += 1
    const factor = readFactor(reader, mayBeFraction)
    if (factor === null || sign === '+') return factor
    return { ...factor, amount: factor.amount.neg(), start }
  }
  if (sign !== '(') return readQuantity(reader, mayBeFraction)
  reader.at += 1
  const inner = readSum(reader)
  if (inner === null) return null
  if (signAt(reader) !== ')') return refuseHere(reader)
  const end = reader.tokens[reader.at]?.end ?? inner.end
  reader.at += 1
  const unitToken = inner.basis === 'named' ? null : takeUnit(reader)
  if (unitToken === null) return { ...inner, isSingle: false, start, end }
  const { unit } = unitToken
  return {
    ...inner,
    basis: 'named',
    amount: inner.amount.mul(unit.size),
    unit,
    isSingle: true,
    start,
    end: unitToken.end,
  }
}

/**
 * Only one factor may have a unit; the others are plain numbers then, fractions too: half of 3" is 3" * 1/2. Where bare decimals
 * below one are inches, .085*2 is still in inches and 85*.5 is in doubt.
 */
function multiply(reader: EntryReader, left: Value, right: Value): Value | null {
  if (left.basis === 'named' && right.basis === 'named') return refuse(reader, { code: 'wrongKind' })
  const carrier = right.basis === 'named' || (right.basis === 'byHabit' && left.basis === 'bare') ? right : left
  return {
    ...carrier,
    amount: left.amount.mul(right.amount),
    look: left.look === 'other' && right.look !== 'other' ? 'both' : left.look,
    isSingle: false,
    start: left.start,
    end: right.end,
  }
}

function divide(reader: EntryReader, left: Value, right: Value): Value | null {
  if (right.amount.equals(0)) return refuse(reader, { code: 'divideByZero' })
  const place = { isSingle: false, start: left.start, end: right.end }
  if (right.basis !== 'named') return { ...left, ...place, amount: left.amount.div(right.amount) }
  if (left.basis === 'named' || !right.isSingle || right.unit === null) return refuse(reader, { code: 'wrongKind' })
  const amount = left.amount.div(right.amount.div(right.unit.size)).mul(right.unit.size)
  return { ...right, ...place, amount }
}
