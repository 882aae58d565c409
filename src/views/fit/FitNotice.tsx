import { lazy, Suspense, useMemo } from 'react'
import { isChangedSinceSigning } from '../../record/changedSinceSigning.ts'
import { useCommission } from '../workshop.ts'

const FitBanner = lazy(async () => ({ default: (await import('./FitBanner.tsx')).FitBanner }))

/** What is already built and no longer fits, in a line; what compares it is only fetched where that can have come about. */
export function FitNotice({ id }: { readonly id: string }) {
  const changes = useCommission((state) => state.changes)
  const facts = useCommission((state) => state.facts)
  const canBe = useMemo(() => isChangedSinceSigning(changes, facts), [changes, facts])
  if (!canBe) return null
  return (
    <Suspense fallback={null}>
      <FitBanner id={id} />
    </Suspense>
  )
}
