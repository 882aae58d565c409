import { expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { layDrawing } from '../../src/drawing/layDrawing.ts'
import { neckDrawingOf } from '../../src/drawing/neckDrawingOf.ts'
import { drawingFigure } from '../../src/views/sheets/drawingFigure.ts'
import { FIGURE_WORDS } from '../../src/words/sheets.ts'
import { DEMO_MODELS } from '../generators/demoModels.ts'

/** A figure beside its place needs no word for the side it lies on, and must never name the other one. */
test.each(
  DEMO_MODELS.flatMap(({ name, plan }) =>
    (['head', 'bridge', 'strings'] as const).flatMap((drawing) =>
      (['right', 'left'] as const).map((handed) => [name, drawing, handed, plan] as const),
    ),
  ),
)('%s, %s, %s hand: no figure names a side', (_, drawing, handed, plan) => {
  const computed = compute({ ...plan, handed })
  const laid = layDrawing(neckDrawingOf(drawing, computed, { ...plan, handed }), {
    widthUnits: 700,
    heightUnits: null,
    figureUnits: 12,
    formatValue: drawingFigure(STARTING_UNITS, FIGURE_WORDS),
    wordOf: (word) => word,
  })
  expect(laid.dimensions.length).toBeGreaterThan(0)
  expect(laid.dimensions.map(({ figure }) => figure.text).filter((text) => /bass|treble/u.test(text))).toEqual([])
})
