import { useId } from 'react'
import type { PaperId } from '../../papers/paperId.ts'
import { PACK_WORDS } from '../../words/press.ts'
import type { PaperStanding } from './usePaperStandings.ts'

/** What one tick stands for: a paper, or several that go together. */
export interface PaperTick {
  readonly name: string
  readonly papers: readonly PaperId[]
}

interface Props {
  readonly heading: string
  readonly ticks: readonly PaperTick[]
  readonly chosen: ReadonlySet<PaperId>
  readonly standings: ReadonlyMap<string, PaperStanding>
  readonly onChoose: (next: ReadonlySet<PaperId>) => void
}

/** Papers to tick; one that left and no longer holds says so. */
export function PaperTicks({ heading, ticks, chosen, standings, onChoose }: Props) {
  const id = useId()
  if (ticks.length === 0) return null
  const toggle = ({ papers }: PaperTick, isOn: boolean): void => {
    const next = new Set(chosen)
    for (const paper of papers) {
      if (isOn) next.add(paper)
      else next.delete(paper)
    }
    onChoose(next)
  }
  return (
    <section className="paper-ticks" aria-labelledby={id}>
      <h2 className="second small" id={id}>
        {heading}
      </h2>
      <ul>
        {ticks.map((tick) => {
          const isOn = tick.papers.every((paper) => chosen.has(paper))
          const isStale = tick.papers.some((paper) => standings.get(paper)?.holds === 'no')
          return (
            <li key={tick.papers[0]}>
              <label className="paper-tick">
                <input type="checkbox" checked={isOn} onChange={() => toggle(tick, !isOn)} />
                <span>{tick.name}</span>
                {isStale && <span className="small">{PACK_WORDS.holds.no}</span>}
              </label>
            </li>
          )
        })}
      </ul>
    </section>
  )
}
