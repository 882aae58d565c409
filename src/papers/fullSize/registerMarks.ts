import type { Point } from '../../core/geometry/point.ts'
import type { Bounds } from '../../drawing/drawing.ts'
import type { Mark } from '../page.ts'
import { level, LINE, upright } from '../pen.ts'
import { hasInk, hasLettering, type Ink } from './ink.ts'
import { onPage, type TileOnPage } from './tileOnPage.ts'
import type { Tile } from './tiling.ts'

/** Half the length of an arm; its ticks stand a millimetre apart, so that what two sheets are off can be read. */
const ARM_MM = 4
const TICK_MM = 1.2
const LEAST_ARM_MM = 1
/** Where along a seam two crosses stand, the first free place of each. */
const FIRST = [0.16, 0.22, 0.28, 0.1, 0.34, 0.06] as const
const SECOND = [0.84, 0.78, 0.72, 0.9, 0.66, 0.94] as const

/** Crosses on what a tile shares with its printed neighbours, at the same places of the plot on both. */
export function registerMarks(tile: TileOnPage, ink: Ink): Mark[] {
  const { tiling, row, column, window } = tile
  const beside = tiling.tiles.filter((other) => Math.abs(other.row - row) + Math.abs(other.column - column) === 1)
  const places = beside.flatMap((other) => seamPlaces(window, other, ink))
  return places.flatMap(({ at, armMm }) => cross(tile, at, armMm))
}

/** Two places on the middle of what two windows share, clear of ink if it can be, at least of letterings. */
function seamPlaces(window: Bounds, other: Tile, ink: Ink): { at: Point; armMm: number }[] {
  const shared = {
    minX: Math.max(window.minX, other.window.minX),
    minY: Math.max(window.minY, other.window.minY),
    maxX: Math.min(window.maxX, other.window.maxX),
    maxY: Math.min(window.maxY, other.window.maxY),
  }
  const [w, h] = [shared.maxX - shared.minX, shared.maxY - shared.minY]
  const armMm = Math.min(ARM_MM, Math.min(w, h) * 0.45)
  if (armMm < LEAST_ARM_MM) return []
  const at = (part: number): Point => ({
    x: shared.minX + w * (w < h ? 0.5 : part),
    y: shared.minY + h * (w < h ? part : 0.5),
  })
  const room = ({ x, y }: Point): Bounds => ({ minX: x - armMm, minY: y - armMm, maxX: x + armMm, maxY: y + armMm })
  return [FIRST, SECOND].map((parts) => {
    const places = parts.map(at)
    const free =
      places.find((place) => !hasInk(ink, room(place))) ?? places.find((place) => !hasLettering(ink, room(place)))
    return { at: free ?? places[0]!, armMm }
  })
}

function cross(tile: TileOnPage, place: Point, armMm: number): Mark[] {
  const { times } = tile
  const { x, y } = onPage(tile, place)
  const pen = LINE.hairMm
  const marks: Mark[] = [
    level(x - armMm * times.across, x + armMm * times.across, y, pen),
    upright(x, y - armMm * times.along, y + armMm * times.along, pen),
  ]
  for (let mm = 1; mm <= armMm; mm++)
    for (const way of [-1, 1]) {
      marks.push(upright(x + way * mm * times.across, y - TICK_MM / 2, y + TICK_MM / 2, pen))
      marks.push(level(x - TICK_MM / 2, x + TICK_MM / 2, y + way * mm * times.along, pen))
    }
  return marks
}
