import { useDeferredValue } from 'react'
import { CATALOGUE } from '../../core/catalogue.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { PART_WORDS } from '../../words/parts.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { ALONG_WORDS, ORIGIN_WORDS, PLACE_WORDS } from '../../words/measuring.ts'
import { FigureRows } from './FigureRows.tsx'
import { isPlace, type RimColumn } from './rimColumns.ts'
import { usePlannedColumn } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import { type FigureTable, joinTables } from './tableText.ts'

interface Props {
  readonly columns: readonly RimColumn[]
  readonly fileName: string
}

/** Named places and stations of a treble side of its own, told from the tail; nothing where it mirrors the bass side. */
export function TrebleRimTables({ columns, fileName }: Props) {
  const { trebleRim, treblePlaces } = useDeferredValue(useSheetBench().computed).numbers
  const planned = usePlannedColumn()
  if (trebleRim.length === 0) return null
  const keys = columns.map((column) => `trebleRim[].${column}` as const)
  const tableOf = (rows: typeof trebleRim | typeof treblePlaces): FigureTable => ({
    columns: [
      { heading: TABLE_WORDS.place, quantity: null },
      { heading: `${ALONG_WORDS.outerFace}, ${ORIGIN_WORDS.tail.from}`, quantity: 'bodyLength' },
      { heading: `${ALONG_WORDS.centreline}, ${ORIGIN_WORDS.tail.from}`, quantity: 'bodyLength' },
      ...columns.map((column, i) => ({
        heading: NUMBER_NAMES[keys[i] ?? 'trebleRim[].depthMm'],
        quantity: CATALOGUE[keys[i] ?? 'trebleRim[].depthMm'].quantity,
        ...planned(rows === trebleRim ? `trebleRim[].${column}` : `treblePlaces[].${column}`),
      })),
    ],
    rows: rows.map((row, i) => [
      isPlace(row) ? PLACE_WORDS[row.place] : String(i),
      row.alongOuterMm,
      row.xMm,
      ...columns.map((column) => row[column]),
    ]),
  })
  const all = (): FigureTable => {
    const named = tableOf(treblePlaces)
    const stations = tableOf(trebleRim)
    return joinTables(named, stations)
  }
  return (
    <>
      {([treblePlaces, trebleRim] as const).map((rows) => {
        const caption = rows === treblePlaces ? PART_WORDS.treblePlaces : PART_WORDS.trebleRim
        return (
          <section key={caption} aria-label={caption}>
            <h2>{caption}</h2>
            <FigureRows
              table={tableOf(rows)}
              caption={caption}
              keys={[null, 'trebleRim[].alongOuterMm', 'trebleRim[].xMm', ...keys]}
              keysOf="columns"
            />
          </section>
        )
      })}
      <TableTools table={all} fileName={fileName} />
    </>
  )
}
