import { useMemo } from 'react'
import type { Computed } from '../../core/compute.ts'
import { planDrawing } from '../../drawing/planDrawing.ts'
import { DrawingFrame } from '../../ui/DrawingFrame.tsx'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { drawingFigure } from '../sheets/drawingFigure.ts'
import { useShop } from '../workshop.ts'

/** What stands over and under the drawing on the sheet: it is seen whole with its own foot. */
const ABOVE_AND_BELOW_PX = 310

/** The body in plan, as it stands now. */
export function OverviewDrawing({ computed }: { readonly computed: Computed }) {
  const units = useShop((state) => state.shop.units)
  const drawing = useMemo(() => planDrawing(computed), [computed])
  const formatValue = useMemo(() => drawingFigure(units, FIGURE_WORDS), [units])
  const mostHeightPx = Math.max(320, window.innerHeight - ABOVE_AND_BELOW_PX)
  return <DrawingFrame mode="screen" drawing={drawing} formatValue={formatValue} mostHeightPx={mostHeightPx} />
}
