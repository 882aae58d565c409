import { overlap } from '../../drawing/bounds.ts'
import type { Lettering, Plot } from '../../drawing/plot.ts'
import { type Block, MARGIN_MM, type Page, type PlotMark, SHEET_SIZES } from '../page.ts'
import { boxMark, LINE } from '../pen.ts'
import { cropMarks } from './cropMarks.ts'
import type { SheetChoice, TemplateOrder } from './fullSizeOrder.ts'
import { hasInk, type Ink, inkOf } from './ink.ts'
import { layMeasuringBox, layUprightScale, measuringWidthMm } from './measuringBox.ts'
import { registerMarks } from './registerMarks.ts'
import { templatePlot } from './templatePlot.ts'
import { layTileMap, MAP_MM } from './tileMap.ts'
import { FOOT_MM, STRIP_MM, type TileOnPage, tileOnPage } from './tileOnPage.ts'
import { layTileTitle } from './tileTitle.ts'
import { type TileSheet, tiling } from './tiling.ts'
import { textsCut, wholeLetterings } from './wholeLetterings.ts'

/** The longest piece cut off a roll: what a page of a PDF can be, and a hand can hold. */
const LONGEST_MM = 5000
/** Narrower rolls leave no room for what stands at the foot. */
const NARROWEST_MM = 210
const BETWEEN_MM = 4

/** A template on as many sheets as it takes: every one with its part of the plot, its place among the others, and a box to measure. */
export function layTemplatePages(order: TemplateOrder, choice: SheetChoice): readonly Page[] {
  return layPlotPages(order, templatePlot(order), choice)
}

/** The same, where the plot was laid before. */
export function layPlotPages(order: TemplateOrder, plot: Plot, choice: SheetChoice): readonly Page[] {
  const ink = inkOf(plot)
  const sheet = sheetOf(choice)
  const grid = tiling(plot.box, sheet, (part) => hasInk(ink, part), textsCut(ink))
  const letterings = wholeLetterings(ink, grid.tiles)
  const count = grid.tiles.length
  return grid.tiles.map((tile, i) => {
    const placed = tileOnPage(tile, grid, sheet.times, sheet.marginMm)
    return {
      size: choice.size,
      widthMm: grid.pageWidthMm,
      heightMm: grid.pageHeightMm,
      number: i + 1,
      count,
      blocks: [
        layTile(placed, plot, ink, letterings.get(tile) ?? []),
        ...(count > 1 ? cropMarks(placed) : []),
        ...layStrip(order, placed, plot, { number: i + 1, count }),
      ],
    }
  })
}

function sheetOf({ size, rollWidthMm, overlapMm, boxMeasuredMm }: SheetChoice): TileSheet {
  const paper =
    size === 'roll' ? { widthMm: Math.max(rollWidthMm, NARROWEST_MM), heightMm: LONGEST_MM } : SHEET_SIZES[size]
  return {
    ...paper,
    isRoll: size === 'roll',
    marginMm: MARGIN_MM,
    footMm: FOOT_MM,
    overlapMm,
    times: { across: timesOf(boxMeasuredMm.across), along: timesOf(boxMeasuredMm.along) },
  }
}

/** How much larger things are set so that a box which came out at `measuredMm` comes out at 100. What is no length changes nothing. */
const timesOf = (measuredMm: number): number => (Number.isFinite(measuredMm) && measuredMm > 0 ? 100 / measuredMm : 1)

function layTile(tile: TileOnPage, plot: Plot, ink: Ink, letterings: readonly Lettering[]): Block {
  const { area, window, times, tiling: grid } = tile
  const mark: PlotMark = {
    kind: 'plot',
    plot: {
      box: plot.box,
      strokes: ink.strokes.filter(({ bounds }) => overlap(bounds, window)).map(({ stroke }) => stroke),
      letterings,
    },
    ...area,
    fromXMm: window.minX,
    fromYMm: window.minY,
    timesAcross: times.across,
    timesAlong: times.along,
  }
  const joined = grid.tiles.length > 1 ? [boxMark(area, 'frame', LINE.hairMm), ...registerMarks(tile, ink)] : []
  return { kind: 'tile', area, stage: null, marks: [mark, ...joined] }
}

/** The strip at the foot: a box to measure, what this is, and where it lies among the other sheets; and the scale beside the tile. */
function layStrip(
  order: TemplateOrder,
  tile: TileOnPage,
  plot: Plot,
  page: { readonly number: number; readonly count: number },
): Block[] {
  const { area, times } = tile
  const words = order.words.fullSize
  const yMm = area.yMm + area.heightMm + FOOT_MM - STRIP_MM
  const right = area.xMm + area.widthMm
  const hasMap = page.count > 1
  const titleX = area.xMm + measuringWidthMm(times) + BETWEEN_MM
  const titleRight = hasMap ? right - MAP_MM.widthMm - BETWEEN_MM : right
  return [
    layUprightScale(words, times, area.xMm, area.yMm + 12),
    layMeasuringBox(words, times, area.xMm, yMm, STRIP_MM),
    layTileTitle(order, tile, page, { xMm: titleX, yMm, widthMm: titleRight - titleX, heightMm: STRIP_MM }),
    ...(hasMap ? [layTileMap(tile, plot, right - MAP_MM.widthMm, yMm + 1)] : []),
  ]
}
