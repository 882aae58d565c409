import type { CutPart } from '../../../core/wood/part.ts'
import { type StockGroup, totalsByWood } from '../../../core/wood/stock.ts'
import type { Plan } from '../../../core/plan.ts'
import type { ShopUnits } from '../../../core/quantity.ts'
import { figureText } from '../../../format/figure.ts'
import { formatBoardFeet } from '../../../format/formatBoardFeet.ts'
import { formatNotNothing } from '../../../format/formatNotNothing.ts'
import { formatQuantity } from '../../../format/formatQuantity.ts'
import { CUTTING_WORDS, groupHeading, groupName } from '../../../words/box/cutting.ts'
import { GRAIN_NAMES, partName, quartersText, WOOD_WORDS } from '../../../words/wood.ts'
import type { FigureColumn, FigureTable } from '../tableText.ts'

type Woods = Plan['cutting']['woods']

const { columns } = WOOD_WORDS
const both = (first: string, second: string): string => `${first} ${second.toLowerCase()}`

const SIZES: readonly FigureColumn[] = [columns.finished, columns.rough].flatMap((state): FigureColumn[] => [
  { heading: both(state, columns.length), quantity: 'bodyLength' },
  { heading: both(state, columns.width), quantity: 'bodyLength' },
  { heading: both(state, columns.thickness), quantity: 'thickness' },
])
const PARTS: readonly FigureColumn[] = [
  { heading: columns.part, quantity: null },
  { heading: columns.quantity, quantity: 'count' },
  ...SIZES,
  { heading: columns.grain, quantity: null },
]
const STOCK: readonly FigureColumn[] = [
  { heading: CUTTING_WORDS.buyFor, quantity: null },
  { heading: CUTTING_WORDS.wood, quantity: null },
  { heading: CUTTING_WORDS.board, quantity: null },
  { heading: CUTTING_WORDS.boardThickness, quantity: 'thickness' },
]

const partRow = (part: CutPart): (number | string)[] => [
  partName(part),
  part.quantity,
  ...[part.finished, part.rough].flatMap(({ lengthMm, widthMm, thicknessMm }) => [lengthMm, widthMm, thicknessMm]),
  GRAIN_NAMES[part.grain],
]

const stockRow = (group: StockGroup, woods: Woods): (number | string)[] => [
  groupName(group),
  woods[group.role] === '' ? CUTTING_WORDS.noWood : woods[group.role],
  quartersText(group.quarters),
  group.nominalMm,
]

/** A group by name: what it is for, its wood, its board. */
export const headingOf = (group: StockGroup, woods: Woods, units: ShopUnits): string =>
  groupHeading(
    groupName(group),
    woods[group.role],
    quartersText(group.quarters),
    figureText(formatQuantity(group.nominalMm, 'thickness', units)),
  )

export const partsTable = (group: StockGroup): FigureTable => ({
  columns: PARTS,
  rows: group.rows.map(({ part }) => partRow(part)),
})

const volumeText = (mm3: number, units: ShopUnits): string => figureText(formatNotNothing(mm3, 'volume', units))

/** Where the wood of a group goes, in a sentence. */
export const sumsOf = (group: StockGroup, units: ShopUnits): string =>
  CUTTING_WORDS.sums(
    volumeText(group.finishedMm3, units),
    volumeText(group.roughMm3, units),
    volumeText(group.kerfMm3, units),
    volumeText(group.spareMm3, units),
  )

/** What to buy for it. */
export const buyingOf = (group: StockGroup, units: ShopUnits): string =>
  CUTTING_WORDS.buy(volumeText(group.boughtMm3, units), formatBoardFeet(group.boardFeet))

export const buyingTable = (groups: readonly StockGroup[], woods: Woods, units: ShopUnits): FigureTable => ({
  columns: [
    ...STOCK,
    { heading: CUTTING_WORDS.volume, quantity: 'volume' },
    { heading: CUTTING_WORDS.boardFeet, quantity: null },
  ],
  rows: groups.map((group) => [
    ...stockRow(group, woods),
    volumeCell(group.boughtMm3, units),
    boardFeetCell(group.boardFeet),
  ]),
})

/** What is bought of every wood, whatever its boards: rounded once. The maker's own names tell woods apart, parts where none is given. */
export const woodsTable = (groups: readonly StockGroup[], woods: Woods, units: ShopUnits): FigureTable => ({
  columns: [
    { heading: CUTTING_WORDS.wood, quantity: null },
    { heading: CUTTING_WORDS.volume, quantity: 'volume' },
    { heading: CUTTING_WORDS.boardFeet, quantity: null },
  ],
  rows: totalsByWood(groups, (group) =>
    group.material !== 'any' || woods[group.role] === '' ? groupName(group) : woods[group.role],
  ).map(({ name, boughtMm3, boardFeet }) => [name, volumeCell(boughtMm3, units), boardFeetCell(boardFeet)]),
})

/** Less than half of the least that is shown is no board. */
const OFFCUT_BOARD_FEET = 0.05
const boardFeetCell = (boardFeet: number): string =>
  boardFeet < OFFCUT_BOARD_FEET ? CUTTING_WORDS.offcut : formatBoardFeet(boardFeet)

/** A volume, or the words for one that is too small to be shown as a number. */
function volumeCell(mm3: number, units: ShopUnits): number | string {
  const { whole } = formatNotNothing(mm3, 'volume', units)
  return whole.startsWith('<') ? whole : mm3
}

/** Every part with the board it comes from, in one table. */
export const cutListTable = (groups: readonly StockGroup[], woods: Woods): FigureTable => ({
  columns: [...STOCK.map((column) => ({ ...column, heading: stockHeading(column) })), ...PARTS],
  rows: groups.flatMap((group) => group.rows.map(({ part }) => [...stockRow(group, woods), ...partRow(part)])),
})

const stockHeading = ({ heading }: FigureColumn): string =>
  heading === CUTTING_WORDS.boardThickness ? both(CUTTING_WORDS.board, heading) : heading
