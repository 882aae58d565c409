import { lazy, Suspense, useState } from 'react'
import { Link } from 'wouter'
import { isSigned } from '../../record/bench/stageStates.ts'
import { pressClock } from '../../record/bench/work.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { layInHand } from '../bench/benchMemory.ts'
import { useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const SayHours = lazy(async () => ({ default: (await import('./SayHours.tsx')).SayHours }))
const RedoStage = lazy(async () => ({ default: (await import('./RedoStage.tsx')).RedoStage }))
const ShareStage = lazy(async () => ({ default: (await import('./ShareStage.tsx')).ShareStage }))
const StartTimer = lazy(async () => ({ default: (await import('../timers/StartTimer.tsx')).StartTimer }))

const words = STAGES_PLACE_WORDS
type Asked = 'hours' | 'redo' | 'several' | 'pauseAll' | 'timer'

/** What is done on a stage: its clock, its hours, its signature, its timer. */
export function StageActs({ stage }: { readonly stage: StageInHand }) {
  const { commission } = useWorkshop()
  const { docId, doc, stateOf, titleOf, isLocked, signOff } = useOrderBench()
  const [asked, setAsked] = useState<Asked | null>(null)
  const { id } = stage
  const state = stateOf(id)
  const isRunning = state.word === 'running'
  const close = () => setAsked(null)
  const press = (): void => {
    // A clock that several share is paused on all of them, or it goes on with them.
    if (isRunning && state.sharedBy > 1) return setAsked('pauseAll')
    const act = isRunning ? 'stop' : 'start'
    commission.addFacts((row, meta) => [pressClock(row, { stageId: id, act, sharedBy: state.sharedBy }, meta)])
  }
  const button = (word: string, act: () => void, look = 'button') => (
    <button className={look} type="button" disabled={isLocked} onClick={act}>
      {word}
    </button>
  )
  return (
    <section className="detail-part" aria-label={words.acts}>
      <div className="commands">
        <Link
          className="button"
          href={`/i/${docId}/bench`}
          aria-label={words.atTheBenchNamed(titleOf(id))}
          onClick={() => layInHand(docId, id)}
        >
          {words.atTheBench}
        </Link>
        {button(isRunning ? words.pauseClock : words.startClock, press)}
        {button(words.sayHours, () => setAsked('hours'))}
        {stage.waitH.high > 0 && button(words.startTimer, () => setAsked('timer'))}
        {isSigned(state) ? (
          <>
            {button(words.redo, () => setAsked('redo'))}
            {button(words.takeBack, () => void commission.withdrawStage(id), 'button button-plain')}
          </>
        ) : (
          button(words.signOff, () => signOff(id), 'button button-next')
        )}
        {button(words.several, () => setAsked('several'), 'button button-plain')}
      </div>
      <Suspense fallback={null}>
        {asked === 'hours' && <SayHours stageId={id} onClose={close} />}
        {asked === 'redo' && <RedoStage stageId={id} onClose={close} />}
        {asked === 'several' && <ShareStage stage={stage} onClose={close} />}
        {asked === 'pauseAll' && <ShareStage stage={stage} first="stop" onClose={close} />}
        {asked === 'timer' && (
          <StartTimer
            docId={docId}
            stageId={id}
            number={doc.number}
            label={titleOf(id)}
            proposed={stage.waitH}
            onClose={close}
          />
        )}
      </Suspense>
    </section>
  )
}
