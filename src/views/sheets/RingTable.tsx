import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { ROSETTE_WORDS, TABLE_WORDS } from '../../words/bodySheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { usePlannedColumn } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

const NAMES = [
  'innerCutterCircleMm',
  'outerCutterCircleMm',
  'passes',
  'hiddenRad',
  'hiddenMm',
  'gapMm',
  'stripLengthMm',
  'visibleRad',
  'tileLengthMm',
  'tileRad',
] as const
const KEYS: readonly NumberKey[] = NAMES.map((name) => `rosette.rings[].${name}` as const)

/** What to cut and to bend for each ring, a ring a row. */
export function RingTable() {
  const { computed } = useSheetBench()
  const planned = usePlannedColumn()
  const rings = computed.numbers.rosette.rings
  const table: FigureTable = {
    columns: [
      { heading: ROSETTE_WORDS.ring, quantity: null },
      ...KEYS.map((key) => ({ heading: NUMBER_NAMES[key], quantity: CATALOGUE[key].quantity, ...planned(key) })),
    ],
    rows: rings.map((_, i) => [String(i + 1), ...KEYS.map((key) => readNumbers(computed.numbers, key)[i] ?? 'none')]),
  }
  return (
    <>
      <FigureRows table={table} caption={TABLE_WORDS.rings} keys={[null, ...KEYS]} keysOf="columns" />
      <TableTools table={() => table} fileName="rosette" />
    </>
  )
}
