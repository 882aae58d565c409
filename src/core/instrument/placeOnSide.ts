import { stationAt } from './placeByX.ts'
import { type RimRow, type RimSite, rimRowAt, type TrebleRow } from './rim.ts'

/** A place along the outer face of one side, mm from the tail; where two pieces of wood meet, `blank` (counted from 1) says on which. */
export interface PlaceOnSide {
  readonly alongMm: number
  readonly blank: number | null
}

/** Where a row of any of the tables of the rim stands. */
export const placeOf = (row: RimRow | TrebleRow): PlaceOnSide => ({
  alongMm: row.alongOuterMm,
  blank: 'blank' in row ? row.blank : null,
})

/** Which piece of wood, counted from 0 at the tail, a place is on: the one it names if that reaches there, else the one nearer the tail. */
export function pieceAt(sites: readonly RimSite[], { alongMm, blank }: PlaceOnSide): number {
  const isBefore = ({ startMm, half }: RimSite) => alongMm <= startMm + half.lengthMm + 1e-6
  const named = blank === null ? undefined : sites[blank - 1]
  if (blank !== null && named !== undefined && alongMm >= named.startMm - 1e-6 && isBefore(named)) return blank - 1
  const found = sites.findIndex(isBefore)
  return found < 0 ? sites.length - 1 : found
}

/** The side at a place, and the piece of wood it is on. Past the end of the wood: its end. */
export function rowAtPlace(
  sites: readonly RimSite[],
  place: PlaceOnSide,
): { readonly row: RimRow; readonly piece: number } {
  const piece = pieceAt(sites, place)
  const site = sites[piece]!
  return { row: rimRowAt(site, place.alongMm - site.startMm), piece }
}

/** Index of the row that stands at a place within 1e-6 mm, and at that place of its blank where one is given; null where none does. */
export function rowIndexAt(rows: readonly RimRow[], alongMm: number, alongBlankMm: number | null): number | null {
  const found = rows.findIndex(
    (row) =>
      stationAt([row.alongOuterMm], alongMm) !== null &&
      (alongBlankMm === null || stationAt([row.alongBlankMm], alongBlankMm) !== null),
  )
  return found < 0 ? null : found
}
