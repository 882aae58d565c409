import type { Head } from '../../record/commission.ts'
import { BENCH_WORDS, standsAt } from '../../words/bench.ts'
import { STAGE_TITLES } from '../../words/stageTitles.ts'

/** Where an instrument stands: its stages as a thin line, what is done drawn wide, a mark at the one that comes next; and the word. */
export function StageThread({ head }: { readonly head: Head }) {
  const { stagesDone, stagesTotal, nextStage, nextTitle } = head
  const along = (stage: number): string => `${((stage + 0.5) / Math.max(1, stagesTotal)) * 100}%`
  return (
    <div className="thread">
      <svg className="thread-line" height="18" width="100%" aria-hidden="true">
        <line x1="0" x2="100%" y1="9" y2="9" className="thread-thin" />
        {stagesDone > 0 && <line x1="0" x2={along(stagesDone - 0.5)} y1="9" y2="9" className="thread-done" />}
        {Array.from({ length: stagesTotal }, (_, stage) => (
          <line
            key={stage}
            x1={along(stage)}
            x2={along(stage)}
            y1={stage < stagesDone ? 4 : 6}
            y2={stage < stagesDone ? 14 : 12}
            className={stage < stagesDone ? 'thread-done' : 'thread-thin'}
          />
        ))}
        {nextStage !== null && <circle cx={along(stagesDone)} cy="9" r="6" className="thread-next" />}
      </svg>
      <p>
        {nextStage === null ? (
          BENCH_WORDS.allDone
        ) : (
          <>
            <span className="second">{BENCH_WORDS.next} </span>
            {nextTitle || STAGE_TITLES[nextStage]}
          </>
        )}
        <span className="second small thread-count">{standsAt(stagesDone, stagesTotal)}</span>
      </p>
    </div>
  )
}
