import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import type { Drawing } from './drawing.ts'
import { asHanded } from './handed.ts'
import { planDrawing } from './planDrawing.ts'

/**
 * The body in plan, for the hand it is played with: what `drawingOf` gives under that name, apart from all others, since an instrument opens
 * on it and need not wait for them.
 */
export const planDrawingOf = (computed: Computed, handed: Plan['handed']): Drawing =>
  asHanded(planDrawing(computed), handed)
