import type { Plot } from '../../drawing/plot.ts'
import type { Block, Mark } from '../page.ts'
import { boxMark, level, LINE } from '../pen.ts'
import type { TileOnPage } from './tileOnPage.ts'

export const MAP_MM = { widthMm: 24, heightMm: 27 } as const
const HATCH_MM = 0.6

/** The sheets of a plot as they lie together, what is cut drawn small over them, the sheet in hand filled. */
export function layTileMap(tile: TileOnPage, plot: Plot, xMm: number, yMm: number): Block {
  const { tiling, area } = tile
  const whole = tiling.tiles.reduce(
    (box, { window }) => ({
      minX: Math.min(box.minX, window.minX),
      minY: Math.min(box.minY, window.minY),
      maxX: Math.max(box.maxX, window.maxX),
      maxY: Math.max(box.maxY, window.maxY),
    }),
    tile.window,
  )
  const [w, h] = [whole.maxX - whole.minX, whole.maxY - whole.minY]
  const scale = Math.min(MAP_MM.widthMm / w, MAP_MM.heightMm / h)
  const cells = tiling.tiles.map(({ row, column, window }): Mark[] => {
    const cell = {
      xMm: xMm + (window.minX - whole.minX) * scale,
      yMm: yMm + (window.minY - whole.minY) * scale,
      widthMm: (window.maxX - window.minX) * scale,
      heightMm: (window.maxY - window.minY) * scale,
    }
    if (row !== tile.row || column !== tile.column) return [boxMark(cell, 'frame', LINE.hairMm)]
    const lines = Math.max(Math.floor(cell.heightMm / HATCH_MM) - 1, 1)
    return [
      boxMark(cell, 'frame', LINE.wideMm),
      ...Array.from({ length: lines }, (_, i) =>
        level(cell.xMm, cell.xMm + cell.widthMm, cell.yMm + ((i + 1) * cell.heightMm) / (lines + 1), LINE.hairMm),
      ),
    ]
  })
  const cut = plot.strokes.filter(({ layer }) => layer === 'cut')
  const small: Plot = {
    box: plot.box,
    letterings: [],
    strokes: (cut.length > 0 ? cut : plot.strokes).map((stroke) => ({
      ...stroke,
      penMm: LINE.narrowMm / scale,
      dashesMm: [],
      covers: false,
    })),
  }
  return {
    kind: 'tileMap',
    area: { xMm, yMm, ...MAP_MM },
    stage: null,
    marks: [
      ...cells.flat(),
      {
        kind: 'plot',
        plot: small,
        fromXMm: whole.minX,
        fromYMm: whole.minY,
        timesAcross: scale,
        timesAlong: scale,
        xMm,
        yMm,
        widthMm: Math.min(w * scale, area.widthMm),
        heightMm: h * scale,
      },
    ],
  }
}
