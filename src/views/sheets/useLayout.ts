import { useMemo } from 'react'
import type { Computed } from '../../core/compute.ts'
import type { Layout, WayAlong } from '../../core/instrument/placeByX.ts'
import type { HalfName } from '../../drawing/innerFace.ts'
import { useSheetBench } from './sheetBench.ts'
import { woodCurve } from './sideInHand.ts'

/** How places are measured on one side of this body, from the maker's origin. */
export function useLayout(along: WayAlong, computed: Computed, side: HalfName = 'bass'): Layout {
  const { origin } = useSheetBench()
  const { geometry, numbers } = computed
  return useMemo(
    () => ({
      half: woodCurve(computed, side),
      lengthMm: geometry.lengthMm,
      saddleLineMm: numbers.scale.saddleLineMm,
      origin,
      along,
    }),
    [computed, geometry, numbers, side, origin, along],
  )
}
