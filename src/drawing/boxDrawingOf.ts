import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import { braceSideDrawing } from './box/braceSideDrawing.ts'
import { bracingDrawing } from './box/bracingDrawing.ts'
import { type EdgeDrawn, edgeSectionDrawing } from './box/edgeSectionDrawing.ts'
import type { BoxDrawingName, Drawing } from './drawing.ts'
import { asHanded } from './handed.ts'

/** What drawings of braces and edges need of a plan beside its numbers. */
export type DrawnBox = EdgeDrawn & Pick<Plan, 'handed' | 'bracing' | 'bridge'>

export interface BoxDrawingOptions {
  /** The place among all braces of the one in question. */
  readonly brace?: number | null
  /** The place round the rim at which an edge is cut across. */
  readonly place?: number
  /** How many times larger small heights are drawn; 1 = true. */
  readonly heightsTimes?: number
}

/** A drawing of braces or edges, for the hand the instrument is played with. */
export function boxDrawingOf(
  name: BoxDrawingName,
  computed: Computed,
  plan: DrawnBox,
  { brace = null, place = 0, heightsTimes = 1 }: BoxDrawingOptions = {},
): Drawing {
  return asHanded(drawRightHanded(name, computed, plan, { brace, place, heightsTimes }), plan.handed)
}

function drawRightHanded(
  name: BoxDrawingName,
  computed: Computed,
  plan: DrawnBox,
  { brace, place, heightsTimes }: Required<BoxDrawingOptions>,
): Drawing {
  switch (name) {
    case 'bracingTop':
      return bracingDrawing(computed, plan, 'top', brace)
    case 'bracingBack':
      return bracingDrawing(computed, plan, 'back', brace)
    case 'braceSide':
      return braceSideDrawing(computed, brace ?? 0, heightsTimes)
    case 'edgeSection':
      return edgeSectionDrawing(computed, plan, place)
  }
}
