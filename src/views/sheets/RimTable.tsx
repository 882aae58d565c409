import { memo } from 'react'
import { CATALOGUE } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { distanceFromOriginMm, type Layout } from '../../core/instrument/placeByX.ts'
import type { PlaceRow, RimRow } from '../../core/instrument/rim.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FROM_READING_WORDS } from '../../words/fromReading.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { ALONG_WORDS, ORIGIN_WORDS, PLACE_WORDS } from '../../words/measuring.ts'
import { CellFigure } from './CellFigure.tsx'
import { ColumnHead } from './ColumnHead.tsx'
import { plannedAtPlace, plannedText } from './planned.ts'
import { isPlace, type RimColumn, type RimList, rimKey } from './rimColumns.ts'
import { TableScroll } from './TableScroll.tsx'
import type { SheetBench } from './sheetBench.ts'
import type { SheetPointer } from './sheetPointer.ts'

interface Props {
  readonly rows: readonly (RimRow | PlaceRow)[]
  readonly kind: RimList
  readonly columns: readonly RimColumn[]
  readonly layout: Layout
  readonly units: ShopUnits
  readonly caption: string
  /** The row in hand. */
  readonly chosen: number | null
  readonly onChoose: (row: number) => void
  readonly openHelp: SheetPointer['openHelp']
  /** What the plan has, where something was measured. */
  readonly planned: SheetBench['planned']
}

/** Stations or named places of the rim, a row each; tapping one takes it in hand. */
export const RimTable = memo(function RimTable(props: Props) {
  const { rows, kind, columns, layout, units, caption, chosen, onChoose, openHelp, planned } = props
  const from = ORIGIN_WORDS[layout.origin].from
  const centreline: Layout = { ...layout, along: 'centreline' }
  const outerFace: Layout = { ...layout, along: 'outerFace' }
  const figure = (value: number, column: RimColumn | 'alongOuterMm') => (
    <CellFigure value={value} quantity={CATALOGUE[`rim[].${column}`].quantity} units={units} />
  )
  /** What was planned in a cell that came out otherwise. */
  const plannedIn = (column: RimColumn, row: number): Figure | null => {
    const now = rows[row]?.[column]
    const before = planned?.numbers[kind][row]?.[column]
    return now === undefined || before === undefined
      ? null
      : plannedAtPlace({ planned, units }, rimKey(kind, column), now, before)
  }
  const titleOf = (column: RimColumn, row: number): string | undefined => {
    const before = plannedIn(column, row)
    return before === null ? undefined : FROM_READING_WORDS.planned(plannedText(before, rimKey(kind, column), units))
  }
  return (
    <TableScroll caption={caption}>
      <table className="table rim-table">
        <caption className="out-of-sight">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{TABLE_WORDS.place}</th>
            <ColumnHead heading={`${ALONG_WORDS.outerFace}, ${from}`} quantity="bodyLength" units={units} />
            <ColumnHead heading={`${ALONG_WORDS.centreline}, ${from}`} quantity="bodyLength" units={units} />
            {columns.map((column) => {
              const key = rimKey(kind, column)
              const { quantity } = CATALOGUE[key]
              const about = { key, openHelp }
              return (
                <ColumnHead
                  key={column}
                  heading={NUMBER_NAMES[key]}
                  quantity={quantity}
                  units={units}
                  isFromReading={rows.some((_, row) => plannedIn(column, row) !== null)}
                  about={about}
                />
              )
            })}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={isPlace(row) ? row.place : i} data-chosen={i === chosen} onClick={() => onChoose(i)}>
              <th scope="row">
                <button className="row-choice" type="button" aria-pressed={i === chosen} onClick={() => onChoose(i)}>
                  {isPlace(row) ? PLACE_WORDS[row.place] : i}
                </button>
              </th>
              <td data-figures>{figure(distanceFromOriginMm(outerFace, row.alongOuterMm), 'alongOuterMm')}</td>
              <td data-figures>{figure(distanceFromOriginMm(centreline, row.alongOuterMm), 'alongOuterMm')}</td>
              {columns.map((column) => (
                <td key={column} data-figures title={titleOf(column, i)}>
                  {figure(row[column], column)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableScroll>
  )
})
