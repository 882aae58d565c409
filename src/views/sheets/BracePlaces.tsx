import { useId, useState } from 'react'
import { nextBraceMm } from '../../core/instrument/nextBrace.ts'
import { setField } from '../../record/changes/setField.ts'
import { MOST_SIDE_BRACES, SIDE_BRACE_RANGE } from '../../record/fields.ts'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { FIELD_WORDS } from '../../words/fields.ts'
import { LININGS_WORDS } from '../../words/linings.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetField } from './useSheetField.ts'

const FIELD = 'plan.sideBraces.atMm'

/** Where the side braces stand: spaced evenly by the program, or place by place as entered. */
export function BracePlaces() {
  const bench = useSheetBench()
  const id = useId()
  const { atMm } = bench.plan.sideBraces
  const { halfLengthMm } = bench.computed.numbers.body
  const [generation, setGeneration] = useState(0)
  const found = bench.computed.numbers.sideBraces.map((row) => row.alongOuterMm)

  /** Places have no name of their own: when they move, half-typed texts are dropped and the fields are made anew. */
  const rearrange = (next: readonly number[] | null): void => {
    atMm?.forEach((_, i) => bench.dropDraft(`${FIELD}.${i}`))
    bench.edit(setField(FIELD, next === null ? null : [...next]), bench.newId())
    setGeneration((before) => before + 1)
  }

  return (
    <section className="sheet-fields" data-field={FIELD} aria-labelledby={id}>
      <h3 id={id}>{FIELD_WORDS['sideBraces.atMm'].name}</h3>
      <p className="second small">{FIELD_WORDS['sideBraces.atMm'].hint}</p>
      {atMm === null ? (
        <>
          <p>{LININGS_WORDS.evenly}</p>
          <button
            className="button"
            type="button"
            disabled={bench.readOnly || found.length > MOST_SIDE_BRACES}
            onClick={() => rearrange(found)}
          >
            {LININGS_WORDS.enterPlaces}
          </button>
        </>
      ) : (
        <>
          {atMm.length === 0 && <p>{LININGS_WORDS.noPlaces}</p>}
          <ol className="pieces">
            {atMm.map((placeMm, i) => (
              <PlaceRow
                key={`${generation} ${i}`}
                places={atMm}
                at={i}
                placeMm={placeMm}
                remove={() => rearrange(atMm.toSpliced(i, 1))}
              />
            ))}
          </ol>
          <div className="commands">
            <button
              className="button"
              type="button"
              disabled={bench.readOnly || atMm.length >= MOST_SIDE_BRACES}
              onClick={() => rearrange([...atMm, nextBraceMm(atMm, halfLengthMm)])}
            >
              {LININGS_WORDS.add}
            </button>
            <button className="button" type="button" disabled={bench.readOnly} onClick={() => rearrange(null)}>
              {LININGS_WORDS.spaceEvenly}
            </button>
          </div>
          {atMm.length >= MOST_SIDE_BRACES && <p className="second small">{LININGS_WORDS.full}</p>}
        </>
      )}
    </section>
  )
}

interface RowProps {
  readonly places: readonly number[]
  readonly at: number
  readonly placeMm: number
  readonly remove: () => void
}

function PlaceRow({ places, at, placeMm, remove }: RowProps) {
  const { readOnly, units } = useSheetBench()
  const name = `${LININGS_WORDS.place} ${at + 1}`
  const binding = useSheetField<LengthValue>(`${FIELD}.${at}`, placeMm, (value) =>
    setField(FIELD, typeof value === 'number' ? places.with(at, value) : [...places]),
  )
  return (
    <li className="piece">
      <LengthField label={name} binding={binding} range={SIDE_BRACE_RANGE} units={units} />
      <div className="commands">
        <button
          className="button"
          type="button"
          aria-label={`${LININGS_WORDS.remove}: ${name}`}
          disabled={readOnly}
          onClick={remove}
        >
          {LININGS_WORDS.remove}
        </button>
      </div>
    </li>
  )
}
