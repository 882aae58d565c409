import type { Computed } from '../../src/core/compute.ts'
import type { Figure } from '../../src/core/figure.ts'
import type { Quantity } from '../../src/core/quantity.ts'
import { bevelsDrawing } from '../../src/drawing/bevelsDrawing.ts'
import { blankDrawing } from '../../src/drawing/blankDrawing.ts'
import { blockDrawing } from '../../src/drawing/blockDrawing.ts'
import { domesDrawing } from '../../src/drawing/domesDrawing.ts'
import type { Drawing, DrawingName } from '../../src/drawing/drawing.ts'
import { planDrawing } from '../../src/drawing/planDrawing.ts'
import { rosetteDrawing } from '../../src/drawing/rosetteDrawing.ts'
import { sectionDrawing } from '../../src/drawing/sectionDrawing.ts'
import type { Sheet } from '../../src/drawing/sheet.ts'
import { sideDrawing } from '../../src/drawing/sideDrawing.ts'
import { SHAPE_WORDS } from '../../src/words/drawing.ts'

const PLATES = { topMm: 2.8, backMm: 2.5 }

export const everyDrawing = (computed: Computed, heightsTimes: number): Record<DrawingName, Drawing> => ({
  plan: planDrawing(computed),
  side: sideDrawing(computed, heightsTimes),
  section: sectionDrawing(computed, PLATES, heightsTimes),
  domes: domesDrawing(computed, heightsTimes),
  blankTreble: blankDrawing(computed, 'treble'),
  blankBass: blankDrawing(computed, 'bass'),
  bevels: bevelsDrawing(computed),
  blockTail: blockDrawing(computed, 'tail', heightsTimes),
  blockNeck: blockDrawing(computed, 'neck', heightsTimes),
  rosette: rosetteDrawing(computed),
})

/** Figures as a shop in millimetres reads them, without the unit. */
export function plainValue(value: Figure, quantity: Quantity): string {
  if (typeof value !== 'number') return value
  if (quantity === 'angle') return `${((value * 180) / Math.PI).toFixed(2)}\u00b0`
  return value.toFixed(quantity === 'thickness' ? 2 : 1)
}

export const sheetOf = (widthUnits: number, heightUnits: number | null, figureUnits: number): Sheet => ({
  widthUnits,
  heightUnits,
  figureUnits,
  formatValue: plainValue,
  wordOf: (word) => SHAPE_WORDS[word],
})
export const DESK = sheetOf(1240, 620, 16)
export const PAPER = sheetOf(90, null, 2.6)
