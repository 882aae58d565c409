import { setField } from '../../../record/changes/setField.ts'
import { MOST_MARKERS } from '../../../record/neckFields.ts'
import { FIELD_WORDS } from '../../../words/fields.ts'
import { FRETS_WORDS } from '../../../words/neck/sheets.ts'
import { useSheetBench } from '../sheetBench.ts'

const FIELD = 'plan.board.markersAt'

/** Which frets are marked: one touch each. */
export function MarkerPicker() {
  const { plan, edit, newId, readOnly } = useSheetBench()
  const marked = plan.board.markersAt
  const toggle = (fret: number): void => {
    const next = marked.includes(fret) ? marked.filter((one) => one !== fret) : [...marked, fret].sort((a, b) => a - b)
    edit(setField(FIELD, next.slice(0, MOST_MARKERS)), newId())
  }
  return (
    <section className="sheet-fields" data-field={FIELD} aria-labelledby="markers-heading">
      <h2 id="markers-heading">{FRETS_WORDS.markers}</h2>
      <p className="second small">{FIELD_WORDS['board.markersAt'].hint}</p>
      <div className="fret-marks">
        {Array.from({ length: plan.scale.frets }, (_, i) => i + 1).map((fret) => (
          <button
            className="fret-mark"
            type="button"
            key={fret}
            aria-pressed={marked.includes(fret)}
            aria-label={FRETS_WORDS.mark(fret)}
            disabled={readOnly || (!marked.includes(fret) && marked.length >= MOST_MARKERS)}
            onClick={() => toggle(fret)}
          >
            {fret}
          </button>
        ))}
      </div>
    </section>
  )
}
