import { useCallback, useDeferredValue, useId } from 'react'
import { stationAt } from '../../core/instrument/placeByX.ts'
import { SIDES_WORDS } from '../../words/sheets.ts'
import { RimTable } from './RimTable.tsx'
import { type RimColumn, rimTable } from './rimColumns.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import { TableTools } from './TableTools.tsx'
import { useLayout } from './useLayout.ts'

interface Props {
  readonly columns: readonly RimColumn[]
  readonly fileName: string
  /** Arc length of the place in hand. */
  readonly placeMm: number
  readonly onPlace: (placeMm: number) => void
}

/**
 * The rim as two tables: the places that have names, then station by station. Some five hundred cells: they follow a stroke after the
 * figures and drawings have, and always with the latest numbers there are.
 */
export function RimTables({ columns, fileName, placeMm, onPlace }: Props) {
  const { computed: latest, units } = useSheetBench()
  const computed = useDeferredValue(latest)
  const { openHelp } = useSheetPointer()
  const layout = useLayout('outerFace', computed)
  const id = useId()
  const { places, rim } = computed.numbers
  const take = useCallback(
    (rows: readonly { readonly alongOuterMm: number }[], row: number) => {
      const found = rows[row]
      if (found !== undefined) onPlace(found.alongOuterMm)
    },
    [onPlace],
  )
  const takePlace = useCallback((row: number) => take(places, row), [take, places])
  const takeStation = useCallback((row: number) => take(rim, row), [take, rim])
  const shared = { columns, layout, units, openHelp }
  return (
    <>
      <h2>{SIDES_WORDS.places}</h2>
      <RimTable
        {...shared}
        rows={places}
        kind="places"
        caption={SIDES_WORDS.places}
        chosen={stationAt(
          places.map((row) => row.alongOuterMm),
          placeMm,
        )}
        onChoose={takePlace}
      />
      <h2 id={id}>{SIDES_WORDS.stations}</h2>
      <TableTools table={() => rimTable([...places, ...rim], columns, layout)} fileName={fileName} />
      <RimTable
        {...shared}
        rows={rim}
        kind="rim"
        caption={SIDES_WORDS.stations}
        chosen={stationAt(
          rim.map((row) => row.alongOuterMm),
          placeMm,
        )}
        onChoose={takeStation}
      />
    </>
  )
}
