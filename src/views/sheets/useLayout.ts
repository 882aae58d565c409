import { useMemo } from 'react'
import type { Computed } from '../../core/compute.ts'
import type { Layout, WayAlong } from '../../core/instrument/placeByX.ts'
import { useSheetBench } from './sheetBench.ts'

/** How places are measured on this body, from the maker's origin. */
export function useLayout(along: WayAlong, computed: Computed): Layout {
  const { origin } = useSheetBench()
  const { geometry, numbers } = computed
  return useMemo(
    () => ({
      half: geometry.rimSite.half,
      lengthMm: geometry.lengthMm,
      saddleLineMm: numbers.scale.saddleLineMm,
      origin,
      along,
    }),
    [geometry, numbers, origin, along],
  )
}
