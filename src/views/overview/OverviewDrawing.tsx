import { useCallback, useMemo } from 'react'
import type { Computed } from '../../core/compute.ts'
import type { Figure } from '../../core/figure.ts'
import type { Quantity } from '../../core/quantity.ts'
import { planDrawing } from '../../drawing/planDrawing.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { DrawingFrame } from '../../ui/DrawingFrame.tsx'
import { useShop } from '../workshop.ts'

/** What stands over and under the drawing on the sheet: it is seen whole with its own foot. */
const ABOVE_AND_BELOW_PX = 310

/** The body in plan, as it stands now. */
export function OverviewDrawing({ computed }: { readonly computed: Computed }) {
  const units = useShop((state) => state.shop.units)
  const drawing = useMemo(() => planDrawing(computed), [computed])
  const formatValue = useCallback(
    (value: Figure, quantity: Quantity): string => {
      const figure = formatQuantity(value, quantity, units)
      // The title block says what body lengths are in.
      const isSaid = quantity === 'bodyLength' && (figure.unit === 'mm' || figure.unit === 'in')
      return figureText(isSaid ? { ...figure, unit: '' } : figure)
    },
    [units],
  )
  const mostHeightPx = Math.max(320, window.innerHeight - ABOVE_AND_BELOW_PX)
  return <DrawingFrame mode="screen" drawing={drawing} formatValue={formatValue} mostHeightPx={mostHeightPx} />
}
