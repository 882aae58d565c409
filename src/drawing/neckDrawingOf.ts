import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import type { Drawing, NeckDrawingName } from './drawing.ts'
import { asHanded } from './handed.ts'
import { bridgeDrawing, bridgeSectionDrawing } from './neck/bridgeDrawing.ts'
import { fretboardDrawing } from './neck/fretboardDrawing.ts'
import { headDrawing } from './neck/headDrawing.ts'
import { neckSetDrawing } from './neck/neckSetDrawing.ts'
import { neckSideDrawing } from './neck/neckSideDrawing.ts'
import { stringsDrawing } from './neck/stringsDrawing.ts'

/** What drawings of the neck need of a plan beside its numbers. */
export type DrawnNeck = Pick<Plan, 'handed' | 'plates' | 'board' | 'frets' | 'strings' | 'bridge' | 'neck' | 'head'>

/** A drawing of neck, strings or bridge, for the hand it is played with; `heightsTimes` where small heights are drawn larger. */
export function neckDrawingOf(name: NeckDrawingName, computed: Computed, plan: DrawnNeck, heightsTimes = 1): Drawing {
  return asHanded(drawRightHanded(name, computed, plan, heightsTimes), plan.handed)
}

function drawRightHanded(name: NeckDrawingName, computed: Computed, plan: DrawnNeck, heightsTimes: number): Drawing {
  switch (name) {
    case 'fretboard':
      return fretboardDrawing(computed)
    case 'strings':
      return stringsDrawing(computed, plan)
    case 'neckSet':
      return neckSetDrawing(computed, plan, heightsTimes)
    case 'bridge':
      return bridgeDrawing(computed, plan.bridge)
    case 'bridgeSection':
      return bridgeSectionDrawing(computed, plan.bridge, plan.plates.topMm)
    case 'neckSide':
      return neckSideDrawing(computed, plan)
    case 'head':
      return headDrawing(computed, plan.head)
  }
}
