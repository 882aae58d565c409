import type { NumberKey } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { DOMES_WORDS, TABLE_WORDS } from '../../words/bodySheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

const PLACES = ['AcrossLowerBout', 'AcrossWaist', 'AcrossUpperBout', 'Along'] as const

/** Straightedge gaps of both plates, place by place. */
export function GapTable() {
  const { computed } = useSheetBench()
  const gap = (plate: 'back' | 'top', place: (typeof PLACES)[number]) => {
    const key: NumberKey = `${plate}.gap${place}Mm`
    return readNumbers(computed.numbers, key)[0] ?? 'none'
  }
  const table: FigureTable = {
    columns: [
      { heading: TABLE_WORDS.place, quantity: null },
      { heading: DOMES_WORDS.backGap, quantity: 'thickness' },
      { heading: DOMES_WORDS.topGap, quantity: 'thickness' },
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
