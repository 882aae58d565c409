import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import { bevelsDrawing } from '../drawing/bevelsDrawing.ts'
import { blankDrawing } from '../drawing/blankDrawing.ts'
import { blockDrawing } from '../drawing/blockDrawing.ts'
import { domesDrawing } from '../drawing/domesDrawing.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { planDrawing } from '../drawing/planDrawing.ts'
import { rosetteDrawing } from '../drawing/rosetteDrawing.ts'
import { sectionDrawing } from '../drawing/sectionDrawing.ts'
import { sideDrawing } from '../drawing/sideDrawing.ts'
import type { StageDrawing } from '../record/patterns/stages.ts'

/** How many times larger the small heights of domes and contours are drawn on paper. */
const HEIGHTS_TIMES = 5

/** The small drawing beside a stage. */
export function stageDrawing(computed: Computed, plates: Plan['plates'], name: StageDrawing): Drawing {
  switch (name) {
    case 'plan':
      return planDrawing(computed)
    case 'side':
      return sideDrawing(computed)
    case 'section':
      return sectionDrawing(computed, plates)
    case 'domes':
      return domesDrawing(computed, HEIGHTS_TIMES)
    case 'blankTreble':
      return blankDrawing(computed, 'treble')
    case 'bevels':
      return bevelsDrawing(computed)
    case 'blockTail':
      return blockDrawing(computed, 'tail', HEIGHTS_TIMES)
    case 'blockNeck':
      return blockDrawing(computed, 'neck', HEIGHTS_TIMES)
    case 'rosette':
      return rosetteDrawing(computed)
  }
}
