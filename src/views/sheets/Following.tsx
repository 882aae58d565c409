import { type ReactNode, useDeferredValue, useMemo } from 'react'
import { SheetBenchContext, useSheetBench } from './sheetBench.ts'

/**
 * A part of a sheet that follows a stroke after what stands above it: as the sheet gave it, on the bench of that same moment. For what is only
 * read: a field in it would find the plan as it was before its own stroke.
 */
export function Following({ children }: { readonly children: ReactNode }) {
  const bench = useSheetBench()
  const now = useMemo(() => ({ bench, children }), [bench, children])
  const shown = useDeferredValue(now)
  return <SheetBenchContext value={shown.bench}>{shown.children}</SheetBenchContext>
}
