import { useMemo } from 'react'
import type { Computed } from '../../core/compute.ts'
import type { Plan } from '../../core/plan.ts'
import { planDrawingOf } from '../../drawing/planDrawingOf.ts'
import { DrawingFrame } from '../../ui/DrawingFrame.tsx'
import { PLAN_TOLD } from '../../words/drawing.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { drawingFigure } from '../sheets/drawingFigure.ts'
import { useShop } from '../workshop.ts'

/** What stands over and under the drawing on the sheet: it is seen whole with its own foot. */
const ABOVE_AND_BELOW_PX = 310

/** The body in plan, as it stands now. */
export function OverviewDrawing({ computed, plan }: { readonly computed: Computed; readonly plan: Plan }) {
  const units = useShop((state) => state.shop.units)
  const drawing = useMemo(() => planDrawingOf(computed, plan.handed), [computed, plan.handed])
  const formatValue = useMemo(() => drawingFigure(units, FIGURE_WORDS), [units])
  const mostHeightPx = Math.max(320, window.innerHeight - ABOVE_AND_BELOW_PX)
  return (
    <DrawingFrame
      mode="screen"
      drawing={drawing}
      told={PLAN_TOLD}
      formatValue={formatValue}
      mostHeightPx={mostHeightPx}
    />
  )
}
