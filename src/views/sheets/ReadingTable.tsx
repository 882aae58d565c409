import { useId, useMemo, useState } from 'react'
import { setReadings } from '../../record/changes/outline.ts'
import { READING_RANGES } from '../../record/fields.ts'
import { MOST_IN_LIST, nextStepMm, type ReadingList, readingFrom } from '../../record/readings.ts'
import type { LengthRange } from '../../ui/LengthField.tsx'
import { PASTE_WORDS, READING_LIST_WORDS, READINGS_WORDS } from '../../words/readings.ts'
import { columnUnit } from './columnUnit.ts'
import { type HeldReading, holdAgain, holdReadings, isSorted, readingsOf, sortHeld } from './heldReadings.ts'
import { NewReading } from './NewReading.tsx'
import { PasteReadings } from './PasteReadings.tsx'
import type { Column, Pair } from './pastedReadings.ts'
import { ReadingRow, readingField } from './ReadingRow.tsx'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'

/** One list of readings: written row by row, or pasted, each with how far it lies off the curve. */
export function ReadingTable({ list }: { readonly list: ReadingList }) {
  const { plan } = useSheetBench()
  const id = useId()
  const { lengthMm, halfWidths } = plan.outline
  const words = READING_LIST_WORDS[list]
  return (
    <section className="readings" data-field={`plan.outline.halfWidths.${list}`} aria-labelledby={id}>
      <h3 id={id}>{words.heading}</h3>
      <p className="second small">{words.lead}</p>
      {list === 'neckRows' && lengthMm === null ? (
        <p>{READINGS_WORDS.needsLength(halfWidths.neckRows.length)}</p>
      ) : (
        <Rows list={list} lengthMm={lengthMm} />
      )}
    </section>
  )
}

function Rows({ list, lengthMm }: { readonly list: ReadingList; readonly lengthMm: number | null }) {
  const bench = useSheetBench()
  const [isPasting, setPasting] = useState(false)
  const stored = bench.plan.outline.halfWidths[list]
  // Only the neck end is told from the joint, and it is not shown without a length.
  const [held, setHeld] = useHeld(list, stored, list === 'neckRows' && lengthMm !== null ? lengthMm : 0)
  const { rows } = held
  const columns = useColumns(list, held.lengthMm)
  const [first] = columns

  /** When rows move, half-typed texts kept under their numbers no longer belong to them. */
  const dropDrafts = (): void =>
    rows.forEach((_, i) => {
      bench.dropDraft(readingField(list, i, 'distance'))
      bench.dropDraft(readingField(list, i, 'halfWidth'))
    })
  const hold = (next: readonly HeldReading[]): void => setHeld((now) => ({ ...now, rows: next }))
  const settle = (): void => {
    if (isSorted(held)) return
    dropDrafts()
    hold(sortHeld(list, rows))
  }
  const replace = (next: Parameters<typeof setReadings>[1]): void => {
    dropDrafts()
    bench.edit(setReadings(list, next), bench.newId())
  }
  const readingOf = ([firstMm, secondMm]: Pair) =>
    list === 'rows'
      ? readingFrom(list, firstMm, secondMm, held.lengthMm)
      : readingFrom(list, secondMm, firstMm, held.lengthMm)
  const givenMm = rows.map((row) => (list === 'rows' ? row.distanceMm : row.reading[1]))
  const isFull = rows.length >= MOST_IN_LIST[list]
  return (
    <>
      {rows.length > 0 && <Heads columns={columns} />}
      <ol>
        {rows.map((row, i) => (
          <ReadingRow
            key={row.id}
            held={held}
            at={i}
            row={row}
            distanceRange={columns[list === 'rows' ? 0 : 1].range}
            hold={hold}
            settle={settle}
            remove={() => replace(readingsOf(rows.toSpliced(i, 1)))}
          />
        ))}
      </ol>
      {isFull ? (
        <p className="second small">{READINGS_WORDS.full}</p>
      ) : (
        <NewReading
          columns={columns}
          nextMm={nextStepMm(givenMm, bench.units.bodyLength)}
          add={(pair) => replace([...readingsOf(rows), readingOf(pair)])}
        />
      )}
      <div className="commands">
        <button className="button" type="button" disabled={bench.readOnly} onClick={() => setPasting(true)}>
          {PASTE_WORDS.open}
          <span className="out-of-sight">{`: ${first.label}`}</span>
        </button>
      </div>
      {isPasting && (
        <PasteReadings
          list={list}
          columns={columns}
          count={rows.length}
          take={(pairs, way) => replace([...(way === 'add' ? readingsOf(rows) : []), ...pairs.map(readingOf)])}
          onClose={() => setPasting(false)}
        />
      )}
    </>
  )
}

/** The rows as they stand on the sheet, laid out anew where the record says something else than they do. */
function useHeld(list: ReadingList, stored: Parameters<typeof holdReadings>[1], lengthMm: number) {
  const [held, setHeld] = useState(() => holdReadings(list, stored, lengthMm))
  let now = held
  if (held.stored !== stored || held.lengthMm !== lengthMm) {
    now = holdAgain(held, stored, lengthMm)
    setHeld(now)
  }
  return [now, setHeld] as const
}

/** What is given, then what is read there: along the body a distance and the half-width, at an end the other way. */
function useColumns(list: ReadingList, lengthMm: number): readonly [Column, Column] {
  return useMemo(() => {
    const words = READING_LIST_WORDS[list]
    const distanceRange: LengthRange =
      list === 'neckRows' ? { ...READING_RANGES.fromTailMm, maxMm: lengthMm } : READING_RANGES.fromTailMm
    const distance: Column = { label: words.distance, range: distanceRange }
    const halfWidth: Column = { label: words.halfWidth, range: READING_RANGES.halfWidthMm }
    return list === 'rows' ? [distance, halfWidth] : [halfWidth, distance]
  }, [list, lengthMm])
}

/** Heads over the rows; every field also carries its own name. */
function Heads({ columns }: { readonly columns: readonly [Column, Column] }) {
  const { units } = useSheetBench()
  const { openHelp } = useSheetPointer()
  const unit = columnUnit('thickness', units)
  return (
    <div className="reading reading-heads">
      {columns.map(({ label }) => (
        <span aria-hidden="true" key={label}>
          {label}
        </span>
      ))}
      <span>
        <button className="number-name" type="button" onClick={() => openHelp('readings[].departureMm')}>
          {READINGS_WORDS.offCurve}
        </button>
        {unit !== '' && <span className="column-unit">{unit}</span>}
      </span>
    </div>
  )
}
