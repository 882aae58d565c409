import type { NumberKey } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { DOMES_WORDS, TABLE_WORDS } from '../../words/bodySheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { usePlannedColumn } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

const PLACES = ['AcrossLowerBout', 'AcrossWaist', 'AcrossUpperBout', 'Along'] as const

/** Straightedge gaps of both plates, place by place. */
export function GapTable() {
  const { computed } = useSheetBench()
  const planned = usePlannedColumn()
  const keyOf = (plate: 'back' | 'top', place: (typeof PLACES)[number]): NumberKey => `${plate}.gap${place}Mm`
  const gap = (plate: 'back' | 'top', place: (typeof PLACES)[number]) =>
    readNumbers(computed.numbers, keyOf(plate, place))[0] ?? 'none'
  const plannedOf = (plate: 'back' | 'top') => {
    const cells = PLACES.map((place) => planned(keyOf(plate, place)).planned?.[0])
    return cells.every((cell) => cell !== undefined) ? { planned: cells } : {}
  }
  const table: FigureTable = {
    columns: [
      { heading: TABLE_WORDS.place, quantity: null },
      { heading: DOMES_WORDS.backGap, quantity: 'thickness', ...plannedOf('back') },
      { heading: DOMES_WORDS.topGap, quantity: 'thickness', ...plannedOf('top') },
    ],
    rows: PLACES.map((place) => [DOMES_WORDS.places[place], gap('back', place), gap('top', place)]),
  }
  return (
    <>
      <FigureRows
        table={table}
        caption={DOMES_WORDS.gaps}
        keys={[null, 'back.gapAcrossLowerBoutMm', 'top.gapAcrossLowerBoutMm']}
        keysOf="columns"
      />
      <TableTools table={() => table} fileName="straightedge-gaps" />
    </>
  )
}
