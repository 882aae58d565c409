import type { Computed } from '../core/compute.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { type DrawnPlan, drawingOf } from '../drawing/drawingOf.ts'
import type { StageDrawing } from '../record/patterns/stages.ts'

/** How many times larger the small heights of domes and contours are drawn on paper. */
const HEIGHTS_TIMES: Partial<Record<StageDrawing, number>> = { domes: 5, blockTail: 5, blockNeck: 5 }

/** The small drawing beside a stage. */
export const stageDrawing = (computed: Computed, plan: DrawnPlan, name: StageDrawing): Drawing =>
  drawingOf(name, computed, plan, { heightsTimes: HEIGHTS_TIMES[name] ?? 1 })
