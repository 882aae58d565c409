import type { Point } from '../../core/geometry/point.ts'
import type { Area } from '../page.ts'
import type { Tile, Tiling } from './tiling.ts'

/** Height of the strip at the foot of every sheet. */
export const STRIP_MM = 30
const GAP_MM = 3
/** What is kept free under a tile: the strip that tells what it is. */
export const FOOT_MM = STRIP_MM + GAP_MM

/** A tile on its page: where it stands, and how its places come to lie on the page. */
export interface TileOnPage extends Tile {
  readonly tiling: Tiling
  readonly area: Area
  readonly times: { readonly across: number; readonly along: number }
}

export function tileOnPage(tile: Tile, tiling: Tiling, times: TileOnPage['times'], marginMm: number): TileOnPage {
  const area = {
    xMm: marginMm,
    yMm: marginMm,
    widthMm: tiling.pageWidthMm - 2 * marginMm,
    heightMm: tiling.pageHeightMm - 2 * marginMm - FOOT_MM,
  }
  return { ...tile, tiling, area, times }
}

/** A place of the plot on the page of a tile, mm from its upper left corner. */
export const onPage = ({ area, window, times }: TileOnPage, { x, y }: Point): Point => ({
  x: area.xMm + (x - window.minX) * times.across,
  y: area.yMm + (y - window.minY) * times.along,
})

/** Rows by letter, columns by number: B2. Past Z, AA. */
export function tileName({ row, column }: Pick<Tile, 'row' | 'column'>): string {
  let letters = ''
  for (let n = row + 1; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters
  return `${letters}${column + 1}`
}
