import { type NumberKey, readNumbers } from '../../../core/numbers.ts'
import { EDGES_WORDS } from '../../../words/box/edges.ts'
import { NUMBER_NAMES } from '../../../words/numberNames.ts'
import { PLACE_WORDS } from '../../../words/measuring.ts'
import { FigureRows } from '../FigureRows.tsx'
import { usePlannedColumn } from '../planned.ts'
import { useSheetBench } from '../sheetBench.ts'
import { TableTools } from '../TableTools.tsx'
import type { FigureTable } from '../tableText.ts'

const SETTINGS = [
  'topBindingOffMm',
  'topBindingSetMm',
  'topPurflingSetMm',
  'backBindingOffMm',
  'backBindingSetMm',
  'backPurflingSetMm',
] as const
const SIDES = ['betweenMm'] as const

/** What to set the cutter to, place by place round the rim: a place a column, so that the eye runs along the rim. */
export function LedgeTable({ list }: { readonly list: 'edgePlaces' | 'trebleEdgePlaces' }) {
  const { computed, planned: isMeasured } = useSheetBench()
  const { numbers } = computed
  const planned = usePlannedColumn()
  const isBass = list === 'edgePlaces'
  const caption = isBass ? EDGES_WORDS.ledges : EDGES_WORDS.ledgesTreble
  const inPlace = (cells: readonly (number | string)[]) => (isMeasured === null ? {} : { planned: cells })
  const rowsOf = (names: readonly (typeof SETTINGS | typeof SIDES)[number][], quantity: 'thickness' | 'bodyLength') => {
    const keys = names
      .map((name): NumberKey => `${list}[].${name}`)
      .filter((key) => readNumbers(numbers, key).some((value) => value !== 'none'))
    const table: FigureTable = {
      columns: [
        { heading: EDGES_WORDS.cut, quantity: null },
        ...numbers[list].map(({ place }, i) => ({
          heading: PLACE_WORDS[place],
          quantity,
          ...inPlace(keys.map((key) => planned(key).planned?.[i] ?? readNumbers(numbers, key)[i] ?? 'none')),
        })),
      ],
      rows: keys.map((key) => [NUMBER_NAMES[key], ...readNumbers(numbers, key)]),
    }
    return { keys, table }
  }
  const settings = rowsOf(SETTINGS, 'thickness')
  const sides = rowsOf(SIDES, 'bodyLength')
  return (
    <section aria-label={caption}>
      <h2>{caption}</h2>
      <FigureRows table={settings.table} caption={caption} keys={settings.keys} keysOf="rows" />
      <TableTools table={() => settings.table} fileName={isBass ? 'ledges' : 'ledges-treble'} />
      {sides.keys.length > 0 && (
        <FigureRows table={sides.table} caption={EDGES_WORDS.between} keys={sides.keys} keysOf="rows" />
      )}
    </section>
  )
}
