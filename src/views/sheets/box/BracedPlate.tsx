import { useMemo } from 'react'
import type { PlateSide } from '../../../core/boxPlan.ts'
import { boxDrawingOf } from '../../../drawing/boxDrawingOf.ts'
import { LeadingDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import type { BraceInHand } from './braceNames.ts'
import { useBraceHands } from './useBraceHands.ts'

interface Props {
  readonly plate: PlateSide
  /** The place among all braces of the chosen one. */
  readonly row: number | null
  readonly onTake: (brace: BraceInHand | null) => void
}

/** A plate with its braces under the maker's hand. */
export function BracedPlate({ plate, row, onTake }: Props) {
  const { computed, builtPlan } = useSheetBench()
  const drawing = useMemo(
    () => boxDrawingOf(plate === 'top' ? 'bracingTop' : 'bracingBack', computed, builtPlan, { brace: row }),
    [computed, builtPlan, plate, row],
  )
  const hands = useBraceHands(plate, row, onTake)
  return <LeadingDrawing drawing={drawing} hands={hands} mostHeightPx={440} />
}
