import type { NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { distanceOfXMm } from '../../core/instrument/placeByX.ts'
import { readNumbers } from '../../core/numbers.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { OUTLINE_WORDS, TABLE_WORDS } from '../../words/bodySheets.ts'
import { ORIGIN_WORDS } from '../../words/measuring.ts'
import { FigureRows } from './FigureRows.tsx'
import { usePlannedColumn } from './planned.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'
import { useSheetBench } from './sheetBench.ts'

const BOUTS: readonly { readonly width: NumberKey; readonly at: NumberKey }[] = [
  { width: 'body.lowerBoutMm', at: 'body.lowerBoutAtMm' },
  { width: 'body.waistMm', at: 'body.waistAtMm' },
  { width: 'body.upperBoutMm', at: 'body.upperBoutAtMm' },
]

/** Bouts and waist as found on the curve, with their places from the maker's origin. */
export function FoundTable() {
  const { computed, origin } = useSheetBench()
  const { numbers, geometry } = computed
  const told = (at: Figure): Figure =>
    typeof at === 'number'
      ? distanceOfXMm({ origin, lengthMm: geometry.lengthMm, saddleLineMm: numbers.scale.saddleLineMm }, at)
      : at
  const first = (key: NumberKey): Figure => readNumbers(numbers, key)[0] ?? 'none'
  const planned = usePlannedColumn()
  const plannedOf = (of: 'width' | 'at', tell: (value: Figure) => Figure) => {
    const cells = BOUTS.map((bout) => planned(bout[of]).planned?.[0] as Figure | undefined)
    return cells.some((cell) => cell !== undefined)
      ? { planned: cells.map((cell, i) => tell(cell ?? first(BOUTS[i]?.[of] ?? 'body.waistMm'))) }
      : {}
  }
  const table: FigureTable = {
    columns: [
      { heading: TABLE_WORDS.place, quantity: null },
      { heading: TABLE_WORDS.wholeWidth, quantity: 'bodyLength', ...plannedOf('width', (value) => value) },
      {
        heading: `${TABLE_WORDS.standsAt}, ${ORIGIN_WORDS[origin].from}`,
        quantity: 'bodyLength',
        ...plannedOf('at', told),
      },
    ],
    rows: BOUTS.map(({ width, at }) => [NUMBER_NAMES[width], first(width), told(first(at))]),
  }
  return (
    <>
      <h2>{OUTLINE_WORDS.found}</h2>
      <FigureRows table={table} caption={TABLE_WORDS.foundCaption} keys={BOUTS.map(({ width }) => width)} />
      <TableTools table={() => table} fileName="outline" />
    </>
  )
}
