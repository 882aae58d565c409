import { useCallback, useDeferredValue, useId } from 'react'
import { rowIndexAt } from '../../core/instrument/placeOnSide.ts'
import type { RimRow, TrebleRow } from '../../core/instrument/rim.ts'
import type { HalfName } from '../../drawing/innerFace.ts'
import { PART_WORDS } from '../../words/parts.ts'
import { SIDES_WORDS } from '../../words/bodySheets.ts'
import { RimTable } from './RimTable.tsx'
import { usePlannedColumn } from './planned.ts'
import { type RimColumn, rimKey, type RimList, rimTable } from './rimColumns.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import { sideInHand } from './sideInHand.ts'
import { type FigureTable, joinTables } from './tableText.ts'
import { TableTools } from './TableTools.tsx'
import { useLayout } from './useLayout.ts'

interface Props {
  readonly columns: readonly RimColumn[]
  readonly fileName: string
  readonly side?: HalfName
  /** Arc length of the place in hand. */
  readonly placeMm: number
  /** The same along its blank: tells apart what stands on either side of a horn. */
  readonly alongBlankMm?: number | null
  readonly onPlace: (placeMm: number, row: RimRow | TrebleRow) => void
}

/**
 * One side of the rim as two tables: the places that have names, then station by station. Some five hundred cells: they follow a stroke
 * after the figures and drawings have, and always with the latest numbers there are.
 */
export function RimTables({ columns, fileName, side = 'bass', placeMm, alongBlankMm = null, onPlace }: Props) {
  const { computed: latest, planned: before, units } = useSheetBench()
  const computed = useDeferredValue(latest)
  const { openHelp } = useSheetPointer()
  const layout = useLayout('outerFace', computed, side)
  const id = useId()
  const { places, stations, placeList, stationList } = sideInHand(computed, side)
  const take = useCallback(
    (rows: readonly (RimRow | TrebleRow)[], row: number) => {
      const found = rows[row]
      if (found !== undefined) onPlace(found.alongOuterMm, found)
    },
    [onPlace],
  )
  const takePlace = useCallback((row: number) => take(places, row), [take, places])
  const takeStation = useCallback((row: number) => take(stations, row), [take, stations])
  const isOwn = stationList === 'trebleRim'
  const plannedColumn = usePlannedColumn()
  const table = (): FigureTable => {
    const of = (rows: readonly (RimRow | TrebleRow)[], list: RimList) =>
      rimTable(rows, columns, layout, (column) => plannedColumn(rimKey(list, column)))
    return joinTables(of(places, placeList), of(stations, stationList))
  }
  const shared = { columns, layout, units, openHelp, planned: before }
  const placesCaption = isOwn ? PART_WORDS.treblePlaces : SIDES_WORDS.places
  const stationsCaption = isOwn ? PART_WORDS.trebleRim : SIDES_WORDS.stations
  return (
    <>
      <h2>{placesCaption}</h2>
      <RimTable
        {...shared}
        rows={places}
        kind={placeList}
        caption={placesCaption}
        chosen={rowIndexAt(places, placeMm, alongBlankMm)}
        onChoose={takePlace}
      />
      <h2 id={id}>{stationsCaption}</h2>
      <TableTools table={table} fileName={fileName} />
      <RimTable
        {...shared}
        rows={stations}
        kind={stationList}
        caption={stationsCaption}
        chosen={rowIndexAt(stations, placeMm, alongBlankMm)}
        onChoose={takeStation}
      />
    </>
  )
}
