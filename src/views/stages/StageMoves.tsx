import { lazy, Suspense, useId, useState } from 'react'
import { duplicateStage, moveStage, skipStage } from '../../record/changes/stages.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const InsertStage = lazy(async () => ({ default: (await import('./InsertStage.tsx')).InsertStage }))

const words = STAGES_PLACE_WORDS
const MOST_TITLE = 120

interface Props {
  readonly stage: StageInHand
  readonly onShow: (id: string) => void
}

/** Where a stage stands among the others, and what comes in beside it. */
export function StageMoves({ stage, onShow }: Props) {
  const { newGesture } = useWorkshop()
  const { stages, titleOf, isLocked, change } = useOrderBench()
  const [inserts, setInserts] = useState<'before' | 'after' | null>(null)
  const farId = useId()
  const { id } = stage
  const at = stages.findIndex((one) => one.id === id)
  const afterNext = stages[at + 2]?.id ?? null
  const again = (): void => {
    const newId = newGesture()
    change(duplicateStage(id, newId, words.onceMoreTitle(titleOf(id)).slice(0, MOST_TITLE)))
    onShow(newId)
  }
  const button = (word: string, act: () => void, isOff = false) => (
    <button className="button button-plain" type="button" disabled={isLocked || isOff} onClick={act}>
      {word}
    </button>
  )
  return (
    <section className="detail-part" aria-label={words.place}>
      <h3>{words.place}</h3>
      <div className="commands detail-moves">
        {button(words.earlier, () => change(moveStage(id, stages[at - 1]?.id ?? null)), at <= 0)}
        {button(words.later, () => change(moveStage(id, afterNext)), at === stages.length - 1)}
        <label className="detail-far" htmlFor={farId}>
          <span className="field-label">{words.moveBefore}</span>
          <select
            className="field-input"
            id={farId}
            value=""
            disabled={isLocked}
            onChange={({ target }) => {
              if (target.value !== '') change(moveStage(id, target.value === 'end' ? null : target.value))
            }}
          >
            <option value="">{words.moveNowhere}</option>
            {stages
              .filter((one) => one.id !== id)
              .map((one) => (
                <option key={one.id} value={one.id}>{`${one.place} ${titleOf(one.id)}`}</option>
              ))}
            <option value="end">{words.atEnd}</option>
          </select>
        </label>
        {button(words.insertBefore, () => setInserts('before'))}
        {button(words.insertAfter, () => setInserts('after'))}
        {button(words.onceMore, again)}
        {button(words.leaveOut, () => change(skipStage(id)))}
      </div>
      {inserts !== null && (
        <Suspense fallback={null}>
          <InsertStage
            side={inserts}
            beside={titleOf(id)}
            beforeId={inserts === 'before' ? id : (stages[at + 1]?.id ?? null)}
            onShow={onShow}
            onClose={() => setInserts(null)}
          />
        </Suspense>
      )}
    </section>
  )
}
