import { memo, useId, useMemo, useState } from 'react'
import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import { standingOf } from '../../record/standing.ts'
import type { Figure } from '../../core/figure.ts'
import { type Numbers, readNumbers } from '../../core/numbers.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { LIST_WORDS, type NumberListName } from '../../words/names/lists.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { PART_WORDS } from '../../words/parts.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { ESTIMATE_MARK } from '../../words/sheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { NumberList } from './NumberList.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { groupNumbers, type PartNumbers } from './numberGroups.ts'
import { plannedBeside, usePlannedColumn } from './planned.ts'
import { QuestionSheet } from './QuestionSheet.tsx'
import { rowNames } from './rowNames.ts'
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
        <RowsTable key={of} of={of} keys={keys} isAlone={single.length === 0 && rows.length === 1} />
      ))}
    </section>
  )
})

/** A row's own number names it: it needs no column beside the name. */
const NAMES_THE_ROW: ReadonlySet<NumberKey> = new Set(['frets[].number', 'markers[].fret'])

interface RowsTableProps {
  readonly of: NumberListName
  readonly keys: readonly NumberKey[]
  /** Nothing else stands under the heading of its part, which then names it. */
  readonly isAlone: boolean
}

function RowsTable({ of, keys, isAlone }: RowsTableProps) {
  const { computed, plan } = useSheetBench()
  const planned = usePlannedColumn()
  const { numbers } = computed
  const count = keys[0] === undefined ? 0 : readNumbers(numbers, keys[0]).length
  if (count === 0) return null
  const shown = keys.filter((key) => !NAMES_THE_ROW.has(key))
  const columns = shown.map((key) => readNumbers(numbers, key))
  const names = rowNames(of, count, numbers, plan)
  const { title, head } = LIST_WORDS[of]
  const table: FigureTable = {
    columns: [
      { heading: head, quantity: null },
      ...shown.map((key) => ({ heading: NUMBER_NAMES[key], quantity: CATALOGUE[key].quantity, ...planned(key) })),
    ],
    rows: names.map((name, i) => [name, ...columns.map((column) => column[i] ?? 'none')]),
  }
  return (
    <section className="number-rows">
      {!isAlone && <h3>{title}</h3>}
      <FigureRows table={table} caption={title} keys={[null, ...shown]} keysOf="columns" />
      <TableTools table={() => table} fileName={of.replaceAll('.', '-')} />
    </section>
  )
}

/** All numbers that stand once, as one table for a file: each in its own unit, which then stands in a column. */
function useAllNumbers(): () => FigureTable {
  const bench = useSheetBench()
  const { computed, plan, units, planned } = bench
  return () => {
    const keys = groupNumbers('').flatMap(({ single }) => single)
    const plannedOf = (key: NumberKey): string => {
      const before = plannedBeside(bench, key)
      return before === null ? '' : text(before, key)
    }
    const more = planned === null ? [] : [TABLE_WORDS.planned]
    const text = (value: Figure, key: NumberKey) => figureText(formatQuantity(value, CATALOGUE[key].quantity, units))
    return {
      columns: [TABLE_WORDS.name, TABLE_WORDS.value, TABLE_WORDS.standing, ...more].map((heading) => ({
        heading,
        quantity: null,
      })),
      rows: keys.map((key) => [
        NUMBER_NAMES[key],
        text(readNumbers(computed.numbers, key)[0] ?? 'none', key),
        standingOf(key, plan) === 'estimate' ? ESTIMATE_MARK : standingOf(key, plan),
        ...more.map(() => plannedOf(key)),
      ]),
    }
  }
}
