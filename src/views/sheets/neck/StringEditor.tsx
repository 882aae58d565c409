import { useState } from 'react'
import type { StringMaterial, StringPlan } from '../../../core/neckPlan.ts'
import { setStrings } from '../../../record/changes/strings.ts'
import { MOST_STRINGS, STRING_RANGES } from '../../../record/neckFields.ts'
import { STRING_SET_KEYS, STRING_SETS } from '../../../record/patterns/stringSets.ts'
import { DecimalField } from '../../../ui/DecimalField.tsx'
import { LengthField, type LengthValue } from '../../../ui/LengthField.tsx'
import { NoteField } from '../../../ui/NoteField.tsx'
import { SelectField } from '../../../ui/SelectField.tsx'
import { MATERIAL_WORDS, STRING_WORDS } from '../../../words/fields/neck.ts'
import { STRINGS_WORDS } from '../../../words/neck/sheets.ts'
import { STRING_SET_CAUTION, STRING_SET_WORDS } from '../../../words/neck/stringSets.ts'
import { useSheetBench } from '../sheetBench.ts'
import { useSheetField } from '../useSheetField.ts'

const FIELD = 'plan.strings.set'
const MATERIALS = (Object.keys(MATERIAL_WORDS) as StringMaterial[]).map((value) => ({
  value,
  label: MATERIAL_WORDS[value],
}))

/** The strings from bass to treble, and usual sets to start from. */
export function StringEditor() {
  const bench = useSheetBench()
  const { set } = bench.plan.strings
  const [generation, setGeneration] = useState(0)

  /** Strings have no name of their own: when they move, half-typed texts are dropped and the fields are made anew. */
  const rearrange = (next: readonly StringPlan[]): void => {
    set.forEach((_, i) => {
      for (const name of ['note', 'diameterMm', 'coreMm', 'massGPerM']) bench.dropDraft(`${FIELD}.${i}.${name}`)
    })
    bench.edit(setStrings(next), bench.newId())
    setGeneration((before) => before + 1)
  }

  return (
    <section className="sheet-fields" data-field={FIELD} aria-labelledby="strings-heading">
      <h2 id="strings-heading">{STRINGS_WORDS.set}</h2>
      <details className="piece-more">
        <summary>{STRINGS_WORDS.takeSet}</summary>
        <p className="second small">{STRING_SET_CAUTION}</p>
        <div className="string-take">
          {STRING_SET_KEYS.map((key) => (
            <button
              className="button"
              type="button"
              key={key}
              disabled={bench.readOnly}
              onClick={() => rearrange(STRING_SETS[key])}
            >
              {STRING_SET_WORDS[key]}
            </button>
          ))}
        </div>
      </details>
      <AddString
        word={STRINGS_WORDS.addBass}
        isFull={bench.readOnly || set.length >= MOST_STRINGS}
        add={() => rearrange([{ ...set[0]!, pairedWithNext: false }, ...set])}
      />
      <ol className="pieces">
        {set.map((string, i) => (
          <li className="piece" key={`${generation} ${i}`}>
            <h3>{STRINGS_WORDS.string(i + 1)}</h3>
            <StringRow set={set} at={i} string={string} />
            <div className="commands">
              <button
                className="button"
                type="button"
                aria-label={`${STRINGS_WORDS.remove}: ${STRINGS_WORDS.string(i + 1)}`}
                disabled={bench.readOnly || set.length === 1}
                onClick={() => rearrange(set.toSpliced(i, 1))}
              >
                {STRINGS_WORDS.remove}
              </button>
            </div>
          </li>
        ))}
      </ol>
      <AddString
        word={STRINGS_WORDS.addTreble}
        isFull={bench.readOnly || set.length >= MOST_STRINGS}
        add={() => rearrange([...set, { ...set.at(-1)!, pairedWithNext: false }])}
      />
      {set.length >= MOST_STRINGS && <p className="second small">{STRINGS_WORDS.full}</p>}
    </section>
  )
}

interface AddProps {
  readonly word: string
  readonly isFull: boolean
  readonly add: () => void
}

/** One more like the outermost on its side. */
function AddString({ word, isFull, add }: AddProps) {
  return (
    <button className="button" type="button" disabled={isFull} onClick={add}>
      {word}
    </button>
  )
}

interface RowProps {
  readonly set: readonly StringPlan[]
  readonly at: number
  readonly string: StringPlan
}

function StringRow({ set, at, string }: RowProps) {
  const bench = useSheetBench()
  const { units, readOnly } = bench
  const place = at + 1
  const label = (name: keyof StringPlan): string => `${STRING_WORDS[name].name} ${place}`
  const changed = (change: Partial<StringPlan>) => setStrings(set.with(at, { ...string, ...change }))
  const note = useSheetField<number>(`${FIELD}.${at}.note`, string.note, (value) => changed({ note: value }))
  const diameter = useSheetField<LengthValue>(`${FIELD}.${at}.diameterMm`, string.diameterMm, (value) =>
    changed({ diameterMm: typeof value === 'number' ? value : string.diameterMm }),
  )
  const core = useSheetField<LengthValue>(`${FIELD}.${at}.coreMm`, string.coreMm, (value) =>
    changed({ coreMm: value === 'flat' ? null : value }),
  )
  const mass = useSheetField<number | null>(`${FIELD}.${at}.massGPerM`, string.massGPerM, (value) =>
    changed({ massGPerM: value }),
  )
  const material = useSheetField<StringMaterial>(`${FIELD}.${at}.material`, string.material, (value) =>
    changed({ material: value }),
  )
  const isWound = string.material === 'woundOnSteel' || string.material === 'woundOnNylon'
  return (
    <div className="piece-values" data-long={units.bodyLength === 'fractionalInch'}>
      <NoteField label={label('note')} binding={note} range={STRING_RANGES.note} />
      <LengthField label={label('diameterMm')} binding={diameter} range={STRING_RANGES.diameterMm} units={units} />
      <SelectField label={label('material')} binding={material} choices={MATERIALS} />
      <DecimalField
        label={label('massGPerM')}
        binding={mass}
        range={{ ...STRING_RANGES.massGPerM }}
        emptyMeans={isWound ? STRINGS_WORDS.unknownMass : STRINGS_WORDS.byDiameter}
      />
      {isWound && (
        <LengthField
          label={label('coreMm')}
          binding={core}
          range={STRING_RANGES.coreMm}
          units={units}
          openWord={STRINGS_WORDS.unknownCore}
        />
      )}
      {place < set.length && (
        <label className="check">
          <input
            type="checkbox"
            checked={string.pairedWithNext}
            disabled={readOnly}
            onChange={(event) => bench.edit(changed({ pairedWithNext: event.target.checked }), bench.newId())}
          />
          <span>{STRINGS_WORDS.pair}</span>
        </label>
      )}
    </div>
  )
}
