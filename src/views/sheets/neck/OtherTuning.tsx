import { setOtherNotes } from '../../../record/changes/strings.ts'
import { STRING_RANGES } from '../../../record/neckFields.ts'
import { retuned, TUNING_KEYS } from '../../../record/patterns/tunings.ts'
import { sameJson } from '../../../record/path.ts'
import { NoteField } from '../../../ui/NoteField.tsx'
import { STRINGS_WORDS } from '../../../words/neck/sheets.ts'
import { TUNING_WORDS } from '../../../words/neck/stringSets.ts'
import { PlanFieldControl } from '../PlanFieldControl.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { useSheetField } from '../useSheetField.ts'

const FIELD = 'plan.strings.otherNotes'
const { min: LOWEST, max: HIGHEST } = STRING_RANGES.note

/** Another tuning or scale to compare with. */
export function OtherTuning() {
  const bench = useSheetBench()
  const { set, otherNotes } = bench.plan.strings
  const choices = TUNING_KEYS.flatMap((key) => {
    const notes = retuned(set, key)
    return notes === null || notes.some((note) => note < LOWEST || note > HIGHEST) ? [] : [{ key, notes }]
  })
  const take = (notes: readonly number[] | null): void => {
    set.forEach((_, i) => bench.dropDraft(`${FIELD}.${i}`))
    bench.edit(setOtherNotes(notes), bench.newId())
  }
  return (
    <section data-field={FIELD} aria-labelledby="other-heading">
      <h2 id="other-heading">{STRINGS_WORDS.other}</h2>
      <p className="second">{STRINGS_WORDS.otherNote}</p>
      <div className="string-take">
        <button
          className="button"
          type="button"
          aria-pressed={otherNotes === null}
          disabled={bench.readOnly}
          onClick={() => take(null)}
        >
          {STRINGS_WORDS.asTuned}
        </button>
        {choices.map(({ key, notes }) => (
          <button
            className="button"
            type="button"
            key={key}
            aria-pressed={sameJson(otherNotes, notes)}
            disabled={bench.readOnly}
            onClick={() => take(notes)}
          >
            {TUNING_WORDS[key]}
          </button>
        ))}
      </div>
      {otherNotes !== null && (
        <div className="piece-values">
          {set.map((_, i) => (
            <OtherNote key={String(i)} notes={otherNotes} at={i} />
          ))}
        </div>
      )}
      <PlanFieldControl field="strings.otherScaleMm" openWord={STRINGS_WORDS.sameScale} />
    </section>
  )
}

function OtherNote({ notes, at }: { readonly notes: readonly number[]; readonly at: number }) {
  const { set } = useSheetBench().plan.strings
  const all = set.map(({ note }, i) => notes[i] ?? note)
  const binding = useSheetField<number>(`${FIELD}.${at}`, all[at] ?? LOWEST, (value) =>
    setOtherNotes(all.with(at, value)),
  )
  return <NoteField label={STRINGS_WORDS.string(at + 1)} binding={binding} range={STRING_RANGES.note} />
}
