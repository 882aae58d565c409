import type { Computed } from '../core/compute.ts'
import { boxDrawingOf, type DrawnBox } from '../drawing/boxDrawingOf.ts'
import { type Drawing, isBoxDrawing, isNeckDrawing } from '../drawing/drawing.ts'
import { type DrawnPlan, drawingOf } from '../drawing/drawingOf.ts'
import { type DrawnNeck, neckDrawingOf } from '../drawing/neckDrawingOf.ts'
import type { StageDrawing } from '../record/patterns/stages.ts'

/** How many times larger the small heights of domes and contours are drawn on paper. */
const HEIGHTS_TIMES: Partial<Record<StageDrawing, number>> = { domes: 5, blockTail: 5, blockNeck: 5, neckSet: 5 }

/** The small drawing beside a stage. */
export function stageDrawing(computed: Computed, plan: DrawnPlan & DrawnNeck & DrawnBox, name: StageDrawing): Drawing {
  const heightsTimes = HEIGHTS_TIMES[name] ?? 1
  if (isBoxDrawing(name)) return boxDrawingOf(name, computed, plan)
  return isNeckDrawing(name)
    ? neckDrawingOf(name, computed, plan, heightsTimes)
    : drawingOf(name, computed, plan, { heightsTimes })
}
