import { figureText } from '../format/figure.ts'
import { formatAngle } from '../format/formatQuantity.ts'
import { parseAngle } from '../format/parseAngle.ts'
import type { FieldRange } from '../record/fieldRange.ts'
import { FIELD_WORDS, fieldProblem, outsideRange } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { TypedField } from './TypedField.tsx'
import { type Reading, useTypedText } from './useTypedText.ts'

export type AngleRange = Extract<FieldRange, { type: 'angle' }>

interface Props {
  readonly label: string
  /** Degrees; null: left open, where `canBeOpen`. */
  readonly binding: FieldBinding<number | null>
  readonly range: AngleRange
  readonly canBeOpen?: boolean
  /** What an open angle was solved to, in degrees. */
  readonly solvedDeg?: number | null
}

/** An angle as a maker types it, in degrees, to a thousandth. */
export function AngleField({ label, binding, range, canBeOpen = false, solvedDeg = null }: Props) {
  const allowed = `${angleText(range.minDeg)} – ${angleText(range.maxDeg)}`
  const read = (text: string): Reading<number | null> => {
    const word = text.trim().toLowerCase()
    if (canBeOpen && (word === '' || word === 'open')) return { ok: true, value: null }
    const parsed = parseAngle(text)
    if (!parsed.ok) {
      const spellings = parsed.problem.code === 'ambiguous' ? parsed.problem.readings : null
      const example = angleText((range.minDeg + range.maxDeg) / 2)
      return { ok: false, sentence: fieldProblem(label, parsed.problem, allowed, example), spellings }
    }
    const side = parsed.deg < range.minDeg ? 'below' : parsed.deg > range.maxDeg ? 'above' : null
    if (side === null) return { ok: true, value: parsed.deg }
    return { ok: false, sentence: outsideRange(label, angleText(parsed.deg), side, allowed), spellings: null }
  }
  const typed = useTypedText<number | null>(binding, read, (deg) => (deg === null ? '' : bareAngle(deg)))
  const shown = typed.reading?.ok ? typed.reading.value : binding.value
  const toggleOpen = (): void => {
    binding.begin()
    binding.take(shown === null ? (solvedDeg ?? range.minDeg) : null)
    typed.forget()
    binding.end()
  }
  return (
    <TypedField
      label={label}
      name={binding.name}
      typed={typed}
      unit={binding.value === null ? '' : '°'}
      understood={typed.reading?.ok && typed.reading.value !== null ? formatAngle(typed.reading.value, 3) : null}
      range={allowed}
      inputMode={range.minDeg < 0 ? 'text' : 'decimal'}
      placeholder={
        binding.value === null ? (solvedDeg === null ? FIELD_WORDS.isOpen : angleText(solvedDeg)) : undefined
      }
    >
      {canBeOpen && (
        <button
          className="field-toggle"
          type="button"
          disabled={binding.readOnly}
          aria-pressed={shown === null}
          aria-label={`${label}: ${FIELD_WORDS.open}`}
          onClick={toggleOpen}
        >
          {FIELD_WORDS.open}
        </button>
      )}
    </TypedField>
  )
}

/** 1.312° as 1.312, 14.10° as 14.1, 90° as 90: as few places as say the same to a thousandth. */
function bareAngle(deg: number): string {
  const { sign, whole } = formatAngle(deg, 3)
  return `${sign}${whole.includes('.') ? whole.replace(/\.?0+$/u, '') : whole}`
}
const angleText = (deg: number): string => figureText({ ...formatAngle(deg, 3), sign: '', whole: bareAngle(deg) })
