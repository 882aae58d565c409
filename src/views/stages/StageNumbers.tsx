import { lazy, Suspense, useState } from 'react'
import type { StageInHand } from '../../record/stageInHand.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'

const NumberPicker = lazy(async () => ({ default: (await import('./NumberPicker.tsx')).NumberPicker }))

/** The numbers of a stage; their names are fetched when they are asked for. */
export function StageNumbers({ stage }: { readonly stage: StageInHand }) {
  const [isOpen, setOpen] = useState(false)
  return (
    <details className="detail-part" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{STAGES_PLACE_WORDS.numbers}</summary>
      {isOpen && (
        <Suspense fallback={null}>
          <NumberPicker stage={stage} />
        </Suspense>
      )}
    </details>
  )
}
