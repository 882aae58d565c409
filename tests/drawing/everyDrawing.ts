import type { Computed } from '../../src/core/compute.ts'
import type { Figure } from '../../src/core/figure.ts'
import { type Jigs, USUAL_JIGS } from '../../src/core/jigs.ts'
import type { Plan } from '../../src/core/plan.ts'
import type { Quantity } from '../../src/core/quantity.ts'
import { boxDrawingOf, type DrawnBox } from '../../src/drawing/boxDrawingOf.ts'
import {
  type CuttingDrawingName,
  type Drawing,
  type DrawingName,
  isBoxDrawing,
  isNeckDrawing,
  type TemplateDrawingName,
} from '../../src/drawing/drawing.ts'
import { type DrawingOptions, type DrawnPlan, drawingOf } from '../../src/drawing/drawingOf.ts'
import { type DrawnNeck, neckDrawingOf } from '../../src/drawing/neckDrawingOf.ts'
import type { Sheet } from '../../src/drawing/sheet.ts'
import { listTemplates, templateDrawingOf } from '../../src/drawing/templateDrawingOf.ts'
import { SHAPE_WORDS } from '../../src/words/drawing.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

/** A plank is drawn from a layout, not from an instrument; templates are listed for each instrument. */
type InstrumentDrawingName = Exclude<DrawingName, CuttingDrawingName | TemplateDrawingName>

const NAMES: readonly InstrumentDrawingName[] = [
  'plan',
  'side',
  'section',
  'domes',
  'inside',
  'blankTreble',
  'blankHorn',
  'blankBass',
  'bevels',
  'blockTail',
  'blockNeck',
  'rosette',
  'bracingTop',
  'bracingBack',
  'braceSide',
  'edgeSection',
  'fretboard',
  'strings',
  'neckSet',
  'bridge',
  'bridgeSection',
  'neckSide',
  'head',
]

/** By its name, whatever it is of. */
type DrawnAll = DrawnPlan & DrawnNeck & DrawnBox
const drawn = (name: InstrumentDrawingName, computed: Computed, plan: DrawnAll, options: DrawingOptions): Drawing =>
  isBoxDrawing(name)
    ? boxDrawingOf(name, computed, plan, { brace: 1, heightsTimes: options.heightsTimes ?? 1 })
    : isNeckDrawing(name)
      ? neckDrawingOf(name, computed, plan, options.heightsTimes)
      : drawingOf(name, computed, plan, options)

/** Every drawing once, the treble side where it shows one. */
export const everyDrawing = (
  computed: Computed,
  heightsTimes: number,
  plan: DrawnAll = STEEL_STRING.plan,
): Record<InstrumentDrawingName, Drawing> =>
  Object.fromEntries(NAMES.map((name) => [name, drawn(name, computed, plan, { heightsTimes })])) as Record<
    InstrumentDrawingName,
    Drawing
  >

/** The same, and both sides of those that show one. */
export const everyView = (computed: Computed, plan: Plan, heightsTimes = 8): [string, Drawing][] =>
  NAMES.flatMap((name): [string, Drawing][] => {
    const view = (options: DrawingOptions) => drawn(name, computed, plan, { heightsTimes, ...options })
    return name === 'side' || name === 'inside'
      ? [
          [`${name}, treble`, view({ side: 'treble' })],
          [`${name}, bass`, view({ side: 'bass' })],
        ]
      : [[name, view({})]]
  })

/** Every template an instrument has, by its name and what it is of. */
export const everyTemplate = (computed: Computed, plan: Plan, jigs: Jigs = USUAL_JIGS): [string, Drawing][] =>
  listTemplates(computed, plan).map((ref) => [
    ref.of === null ? ref.name : `${ref.name}, ${ref.of}`,
    templateDrawingOf(ref, computed, plan, jigs),
  ])

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
/** Full size: one unit is a millimetre, and the sheet as large as the piece. */
export const FULL_SIZE = sheetOf(1000, null, 3)
export const DESK = sheetOf(1240, 620, 16)
export const PAPER = sheetOf(90, null, 2.6)
