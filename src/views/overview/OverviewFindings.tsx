import { lazy, Suspense } from 'react'
import type { Finding } from '../../core/findings.ts'
import type { PlanField } from '../../core/planFields.ts'
import { OVERVIEW_WORDS } from '../../words/instrument.ts'

/** Their sentences come with the first that is found. */
const OverviewFindingList = lazy(async () => ({
  default: (await import('./OverviewFindingList.tsx')).OverviewFindingList,
}))

interface Props {
  readonly findings: readonly Finding[]
  readonly onGo: (field: PlanField, inside: string | null) => void
}

/** All that does not fit on this instrument. */
export function OverviewFindings({ findings, onGo }: Props) {
  return (
    <section aria-labelledby="overview-findings">
      <h2 id="overview-findings">{OVERVIEW_WORDS.findings}</h2>
      {findings.length === 0 ? (
        <p className="second">{OVERVIEW_WORDS.noFindings}</p>
      ) : (
        <Suspense fallback={null}>
          <OverviewFindingList findings={findings} onGo={onGo} />
        </Suspense>
      )}
    </section>
  )
}
