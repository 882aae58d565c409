import { useState } from 'react'
import type { ShopUnits } from '../core/quantity.ts'
import { type Figure, figureText } from '../format/figure.ts'
import { formatAllowedRange } from '../format/formatAllowedRange.ts'
import { formatLength } from '../format/formatLength.ts'
import { parseLength } from '../format/parseLength.ts'
import type { FieldRange } from '../record/fieldRange.ts'
import { FIELD_WORDS, fieldProblem, outsideRange } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { TypedField } from './TypedField.tsx'
import { type Reading, useTypedText } from './useTypedText.ts'

export type LengthRange = Extract<FieldRange, { type: 'length' }>
/** A length in mm; null: left open; 'flat' where the field knows it. */
export type LengthValue = number | 'flat' | null

interface Props {
  readonly label: string
  readonly binding: FieldBinding<LengthValue>
  readonly range: LengthRange
  readonly units: ShopUnits
  /** What an open field was solved to, mm; null or left out: not known. */
  readonly solvedMm?: number | 'flat' | null
  /** What an open field means, where nothing is solved for. */
  readonly openWord?: string
}

/** A length as a maker types it, kept in mm, shown in the shop's unit for its kind. */
export function LengthField({ label, binding, range, units, solvedMm = null, openWord }: Props) {
  const [lastMm, setLastMm] = useState<number | null>(null)
  if (typeof binding.value === 'number' && binding.value !== lastMm) setLastMm(binding.value)
  const read = (text: string) => readLength(text, label, range, units)
  const typed = useTypedText<LengthValue>(binding, read, (value) => writeLength(value, range, units))
  const { value } = binding
  const allowed = formatAllowedRange(range.minMm, range.maxMm, range.quantity, units)
  const understood = typed.reading?.ok ? figureOf(typed.reading.value, range, units) : null

  const choose = (next: LengthValue): void => {
    binding.begin()
    binding.take(next)
    typed.forget()
    binding.end()
  }
  const aNumber = (): number => lastMm ?? (typeof solvedMm === 'number' ? solvedMm : range.minMm)
  const shownValue = typed.reading?.ok ? typed.reading.value : value

  return (
    <TypedField
      label={label}
      name={binding.name}
      typed={typed}
      unit={typeof value === 'number' ? unitBehind(formatLength(value, range.quantity, units)) : ''}
      understood={understood}
      range={allowed.text}
      placeholder={value === null ? (openWord ?? openText(solvedMm, range, units)) : undefined}
    >
      {range.flat && (
        <button
          className="field-toggle"
          type="button"
          disabled={binding.readOnly}
          aria-pressed={shownValue === 'flat'}
          aria-label={`${label}: ${FIELD_WORDS.flat}`}
          onClick={() => choose(shownValue === 'flat' ? aNumber() : 'flat')}
        >
          {FIELD_WORDS.flat}
        </button>
      )}
      {range.open && (
        <button
          className="field-toggle"
          type="button"
          disabled={binding.readOnly}
          aria-pressed={shownValue === null}
          aria-label={`${label}: ${openWord ?? FIELD_WORDS.open}`}
          onClick={() => choose(shownValue === null ? (typeof solvedMm === 'number' ? solvedMm : aNumber()) : null)}
        >
          {openWord ?? FIELD_WORDS.open}
        </button>
      )}
    </TypedField>
  )
}

/** Reads a length against its field's range: a value, or the sentence that is shown. */
export function readLength(text: string, label: string, range: LengthRange, units: ShopUnits): Reading<LengthValue> {
  const allowed = formatAllowedRange(range.minMm, range.maxMm, range.quantity, units).text
  const word = text.trim().toLowerCase()
  if (range.flat && word === 'flat') return { ok: true, value: 'flat' }
  if (range.open && (word === 'open' || word === '')) return { ok: true, value: null }
  const parsed = parseLength(text, range.quantity, units)
  if (!parsed.ok) {
    const example = figureText(formatLength((range.minMm + range.maxMm) / 2, range.quantity, units))
    const spellings = parsed.problem.code === 'ambiguous' ? parsed.problem.readings : null
    return { ok: false, sentence: fieldProblem(label, parsed.problem, allowed, example), spellings }
  }
  const side = parsed.mm < range.minMm ? 'below' : parsed.mm > range.maxMm ? 'above' : null
  if (side === null) return { ok: true, value: parsed.mm }
  const understood = figureText(formatLength(parsed.mm, range.quantity, units))
  return { ok: false, sentence: outsideRange(label, understood, side, allowed), spellings: null }
}

function writeLength(value: LengthValue, range: LengthRange, units: ShopUnits): string {
  if (value === null) return ''
  const figure = figureOf(value, range, units)
  if (figure === null) return FIELD_WORDS.flat
  return unitBehind(figure) === '' ? figureText(figure) : `${figure.sign}${figure.whole}`
}

function figureOf(value: LengthValue, range: LengthRange, units: ShopUnits): Figure | null {
  return typeof value === 'number' ? formatLength(value, range.quantity, units) : null
}

/** The unit that can stand behind the line without changing what a bare number means: 0.5 thou or 3 7/8" must carry their own. */
function unitBehind({ unit, fraction, remainder, whole }: Figure): string {
  if (fraction !== null || remainder !== null || unit === '"' || unit === 'ft') return ''
  return unit === 'thou' && Number(whole) < 1 ? '' : unit
}

function openText(solvedMm: number | 'flat' | null, range: LengthRange, units: ShopUnits): string {
  if (solvedMm === null) return FIELD_WORDS.isOpen
  return solvedMm === 'flat' ? FIELD_WORDS.flat : figureText(formatLength(solvedMm, range.quantity, units))
}
