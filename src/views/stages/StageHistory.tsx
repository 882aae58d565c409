import { formatDate } from '../../format/formatDate.ts'
import { formatWorkHours } from '../../format/formatWorkHours.ts'
import { formatMoment } from '../../format/formatMoment.ts'
import { workOf } from '../../record/bench/work.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useCommission } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS

/** What was signed off and what was to be done again, and every stretch of work. */
export function StageHistory({ stage }: { readonly stage: StageInHand }) {
  const facts = useCommission((state) => state.facts)
  const { stateOf } = useOrderBench()
  const { history } = stateOf(stage.id)
  const entries = workOf(facts).get(stage.id)?.entries ?? []
  return (
    <section className="detail-part" aria-label={words.history}>
      <h3>{words.history}</h3>
      {history.length + entries.length === 0 ? (
        <p className="second">{words.nothingYet}</p>
      ) : (
        <ul className="detail-history">
          {history.map((event) => (
            <li key={event.factId}>
              {event.kind === 'signed'
                ? words.signed(formatMoment(event.at))
                : words.redone(formatMoment(event.at), event.reason)}
            </li>
          ))}
          {entries.map(({ factId, on, hours, how, sharedBy }) => (
            <li key={factId}>{words.worked(formatDate(on), formatWorkHours(hours), how === 'clock', sharedBy)}</li>
          ))}
        </ul>
      )}
    </section>
  )
}
