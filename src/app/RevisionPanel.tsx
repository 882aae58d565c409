import { lazy, Suspense, useState } from 'react'
import { REVISION_WORDS } from '../words/instrument.ts'
import './revision.css'

const RevisionContent = lazy(async () => ({ default: (await import('./RevisionContent.tsx')).RevisionContent }))

/** Behind the revision code: what is in it comes when it is first opened. */
export function RevisionPanel({ id }: { readonly id: string }) {
  const [isShown, setShown] = useState(false)
  return (
    <div className="title-block-panel" id={id} popover="auto" onToggle={(event) => setShown(event.newState === 'open')}>
      <h2>{REVISION_WORDS.title}</h2>
      {isShown && (
        <Suspense fallback={null}>
          <RevisionContent />
        </Suspense>
      )}
    </div>
  )
}
