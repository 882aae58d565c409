import { memo, useId, useMemo, useState } from 'react'
import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { type Numbers, readNumbers } from '../../core/numbers.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { PART_WORDS } from '../../words/parts.ts'
import { ESTIMATE_MARK, PLACE_WORDS, TABLE_WORDS } from '../../words/sheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { NumberList } from './NumberList.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { groupNumbers, type PartNumbers } from './numberGroups.ts'
import { QuestionSheet } from './QuestionSheet.tsx'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

/** Every number of the instrument, by part. */
export function NumbersSheet() {
  const [search, setSearch] = useState('')
  const { numbers } = useSheetBench().computed
  const named = useMemo(() => groupNumbers(search), [search])
  const parts = named.filter(({ single, rows }) => single.length > 0 || rows.some((list) => hasRows(list, numbers)))
  const allNumbers = useAllNumbers()
  const id = useId()
  return (
    <QuestionSheet
      sheet="numbers"
      tools={<OriginSwitch />}
      main={
        <>
          <div className="field number-search">
            <label className="field-label" htmlFor={id}>
              {TABLE_WORDS.search}
            </label>
            <input
              className="field-input"
              id={id}
              type="search"
              autoComplete="off"
              value={search}
              onChange={(event) => setSearch(event.target.value)}
            />
          </div>
          <TableTools table={allNumbers} fileName="numbers" />
          {parts.length === 0 && <output>{TABLE_WORDS.nothingFound}</output>}
          {parts.map((part) => (
            <PartTables key={part.part} {...part} />
          ))}
        </>
      }
    />
  )
}

/** Whether this instrument has any row of a list. */
const hasRows = ({ keys }: PartNumbers['rows'][number], numbers: Numbers): boolean =>
  keys[0] !== undefined && readNumbers(numbers, keys[0]).length > 0

const PartTables = memo(function PartTables({ part, single, rows }: PartNumbers) {
  return (
    <section className="number-part" aria-labelledby={`part-${part}`}>
      <h2 id={`part-${part}`}>{PART_WORDS[part]}</h2>
      {single.length > 0 && <NumberList keys={single} />}
      {rows.map(({ of, keys }) => (
        <RowsTable key={of} of={of} keys={keys} />
      ))}
    </section>
  )
})

/** Stations are counted from the tail, points of a face from its middle: the first is 0. */
const STARTS_AT_NOUGHT = /^(rim|trebleRim)$|contour$|flank$/

function RowsTable({ of, keys }: { readonly of: string; readonly keys: readonly NumberKey[] }) {
  const { computed } = useSheetBench()
  const columns = keys.map((key) => readNumbers(computed.numbers, key))
  const count = columns[0]?.length ?? 0
  const name = (i: number): string => {
    const place = of === 'places' || of === 'treblePlaces' ? computed.numbers[of][i]?.place : undefined
    if (place !== undefined) return PLACE_WORDS[place]
    return String(STARTS_AT_NOUGHT.test(of) ? i : i + 1)
  }
  if (count === 0) return null
  const table: FigureTable = {
    columns: [
      { heading: TABLE_WORDS.row, quantity: null },
      ...keys.map((key) => ({ heading: NUMBER_NAMES[key], quantity: CATALOGUE[key].quantity })),
    ],
    rows: Array.from({ length: count }, (_, i) => [name(i), ...columns.map((column) => column[i] ?? 'none')]),
  }
  return (
    <>
      <FigureRows table={table} caption={`${TABLE_WORDS.rowsOf} ${of}`} keys={[null, ...keys]} keysOf="columns" />
      <TableTools table={() => table} fileName={of.replaceAll('.', '-')} />
    </>
  )
}

/** All numbers that stand once, as one table for a file: each in its own unit, which then stands in a column. */
function useAllNumbers(): () => FigureTable {
  const { computed, units } = useSheetBench()
  return () => {
    const keys = groupNumbers('').flatMap(({ single }) => single)
    const text = (value: Figure, key: NumberKey) => figureText(formatQuantity(value, CATALOGUE[key].quantity, units))
    return {
      columns: [TABLE_WORDS.name, TABLE_WORDS.value, TABLE_WORDS.standing].map((heading) => ({
        heading,
        quantity: null,
      })),
      rows: keys.map((key) => [
        NUMBER_NAMES[key],
        text(readNumbers(computed.numbers, key)[0] ?? 'none', key),
        CATALOGUE[key].standing === 'estimate' ? ESTIMATE_MARK : CATALOGUE[key].standing,
      ]),
    }
  }
}
