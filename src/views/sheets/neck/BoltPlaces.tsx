import { useState } from 'react'
import { nextBoltMm } from '../../../core/instrument/neck/nextBolt.ts'
import { setField } from '../../../record/changes/setField.ts'
import { BOLT_RANGE, MOST_BOLTS } from '../../../record/neckFields.ts'
import { LengthField, type LengthValue } from '../../../ui/LengthField.tsx'
import { FIELD_WORDS } from '../../../words/fields.ts'
import { NECK_WORDS } from '../../../words/neck/sheets.ts'
import { useSheetBench } from '../sheetBench.ts'
import { useSheetField } from '../useSheetField.ts'

const FIELD = 'plan.neck.boltsAtMm'

/** Where the bolts or dowels go through, from the top downward. */
export function BoltPlaces() {
  const bench = useSheetBench()
  const { boltsAtMm } = bench.plan.neck
  const [generation, setGeneration] = useState(0)
  const rearrange = (next: readonly number[]): void => {
    boltsAtMm.forEach((_, i) => bench.dropDraft(`${FIELD}.${i}`))
    bench.edit(setField(FIELD, [...next]), bench.newId())
    setGeneration((before) => before + 1)
  }
  return (
    <section className="sheet-fields" data-field={FIELD} aria-labelledby="bolts-heading">
      <h3 id="bolts-heading">{NECK_WORDS.bolts}</h3>
      <p className="second small">{FIELD_WORDS['neck.boltsAtMm'].hint}</p>
      {boltsAtMm.length === 0 && <p>{NECK_WORDS.noBolts}</p>}
      <ol className="pieces">
        {boltsAtMm.map((placeMm, i) => (
          <li className="piece" key={`${generation} ${i}`}>
            <BoltRow all={boltsAtMm} at={i} placeMm={placeMm} />
            <div className="commands">
              <button
                className="button"
                type="button"
                aria-label={`${NECK_WORDS.removeBolt}: ${NECK_WORDS.bolt(i + 1)}`}
                disabled={bench.readOnly}
                onClick={() => rearrange(boltsAtMm.toSpliced(i, 1))}
              >
                {NECK_WORDS.removeBolt}
              </button>
            </div>
          </li>
        ))}
      </ol>
      <button
        className="button"
        type="button"
        disabled={bench.readOnly || boltsAtMm.length >= MOST_BOLTS}
        onClick={() => rearrange([...boltsAtMm, nextBoltMm(boltsAtMm, BOLT_RANGE.maxMm)])}
      >
        {NECK_WORDS.addBolt}
      </button>
    </section>
  )
}

interface RowProps {
  readonly all: readonly number[]
  readonly at: number
  readonly placeMm: number
}

function BoltRow({ all, at, placeMm }: RowProps) {
  const { units } = useSheetBench()
  const binding = useSheetField<LengthValue>(`${FIELD}.${at}`, placeMm, (value) =>
    setField(FIELD, typeof value === 'number' ? all.with(at, value) : [...all]),
  )
  return <LengthField label={NECK_WORDS.bolt(at + 1)} binding={binding} range={BOLT_RANGE} units={units} />
}
