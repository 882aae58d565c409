import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import { distanceFromOriginMm, type Layout } from '../../core/instrument/placeByX.ts'
import type { PlaceRow, RimRow } from '../../core/instrument/rim.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { ALONG_WORDS, ORIGIN_WORDS, PLACE_WORDS } from '../../words/measuring.ts'
import type { PlaceList, StationList } from './sideInHand.ts'
import type { FigureColumn, FigureTable } from './tableText.ts'

/** The tables that rows of the rim stand in. */
export type RimList = PlaceList | StationList
export type RimColumn = Exclude<keyof RimRow, 'alongOuterMm' | 'xMm'>

export const SIDE_COLUMNS: readonly RimColumn[] = [
  'depthMm',
  'cutWidthMm',
  'firstDepthMm',
  'alongBlankMm',
  'topBevelRad',
  'backBevelRad',
  'topEdgeMm',
  'backEdgeMm',
  'yMm',
]
export const BEVEL_COLUMNS: readonly RimColumn[] = ['topBevelRad', 'backBevelRad', 'topEdgeMm', 'backEdgeMm']

export const PROUD_COLUMNS: readonly RimColumn[] = [
  'topProudOuterMm',
  'topProudInnerMm',
  'backProudOuterMm',
  'backProudInnerMm',
]

export const rimKey = (rows: RimList, column: RimColumn): NumberKey => `${rows}[].${column}`

export const isPlace = (row: RimRow | PlaceRow): row is PlaceRow => 'place' in row

/** Rows of the rim as a table: name, both ways along from the maker's origin, then the columns asked for. */
export function rimTable(
  rows: readonly (RimRow | PlaceRow)[],
  columns: readonly RimColumn[],
  layout: Layout,
  planned: (column: RimColumn) => Pick<FigureColumn, 'planned'> = () => ({}),
): FigureTable {
  const from = ORIGIN_WORDS[layout.origin].from
  const centreline: Layout = { ...layout, along: 'centreline' }
  const outerFace: Layout = { ...layout, along: 'outerFace' }
  return {
    columns: [
      { heading: TABLE_WORDS.place, quantity: null },
      { heading: `${ALONG_WORDS.outerFace}, ${from}`, quantity: 'bodyLength' },
      { heading: `${ALONG_WORDS.centreline}, ${from}`, quantity: 'bodyLength' },
      ...columns.map((column) => ({
        heading: NUMBER_NAMES[rimKey('rim', column)],
        quantity: CATALOGUE[rimKey('rim', column)].quantity,
        ...planned(column),
      })),
    ],
    rows: rows.map((row, i) => [
      isPlace(row) ? PLACE_WORDS[row.place] : String(i),
      distanceFromOriginMm(outerFace, row.alongOuterMm),
      distanceFromOriginMm(centreline, row.alongOuterMm),
      ...columns.map((column) => row[column]),
    ]),
  }
}
