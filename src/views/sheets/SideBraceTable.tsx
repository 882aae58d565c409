import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { LININGS_WORDS } from '../../words/linings.ts'
import { FigureRows } from './FigureRows.tsx'
import { usePlannedColumn } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

const NAMES = ['alongOuterMm', 'xMm', 'spacingMm', 'lengthMm', 'faceRadiusMm', 'faceRiseMm'] as const
const SIDES = {
  sideBraces: { caption: LININGS_WORDS.braces, fileName: 'side-braces' },
  bass: { caption: LININGS_WORDS.bracesOfBass, fileName: 'side-braces-bass' },
  trebleBraces: { caption: LININGS_WORDS.bracesOfTreble, fileName: 'side-braces-treble' },
} as const

/** The side braces, a row each; the treble side has a table of its own where it does not mirror the bass side. */
export function SideBraceTables() {
  const { plan, computed } = useSheetBench()
  if (plan.sideBraces.form === 'none') return null
  const ownTreble = computed.numbers.trebleRim.length > 0
  return (
    <>
      <BraceTable list="sideBraces" side={ownTreble ? 'bass' : 'sideBraces'} />
      {ownTreble && <BraceTable list="trebleBraces" side="trebleBraces" />}
    </>
  )
}

interface Props {
  readonly list: 'sideBraces' | 'trebleBraces'
  readonly side: keyof typeof SIDES
}

function BraceTable({ list, side }: Props) {
  const { numbers } = useSheetBench().computed
  const planned = usePlannedColumn()
  const { caption, fileName } = SIDES[side]
  const keys: readonly NumberKey[] = NAMES.map((name) => `${list}[].${name}` as const)
  const table: FigureTable = {
    columns: [
      { heading: LININGS_WORDS.brace, quantity: null },
      ...keys.map((key) => ({ heading: NUMBER_NAMES[key], quantity: CATALOGUE[key].quantity, ...planned(key) })),
    ],
    rows: numbers[list].map((_, i) => [String(i + 1), ...keys.map((key) => readNumbers(numbers, key)[i] ?? 'none')]),
  }
  return (
    <section aria-label={caption}>
      <h2>{caption}</h2>
      {table.rows.length === 0 ? (
        <p>{LININGS_WORDS.noBraces}</p>
      ) : (
        <>
          <FigureRows table={table} caption={caption} keys={[null, ...keys]} keysOf="columns" />
          <TableTools table={() => table} fileName={fileName} />
        </>
      )}
    </section>
  )
}
