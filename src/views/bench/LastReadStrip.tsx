import type { ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import { withdraw } from '../../record/facts.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { useCommission, useWorkshop } from '../workshop.ts'
import type { LastRead } from './useStoreReading.ts'
import { VerdictMark, verdictText } from './VerdictMark.tsx'

interface Props {
  readonly last: LastRead
  readonly units: ShopUnits
  /** Takes the number that was read in hand again. */
  readonly onReturn: () => void
  readonly onTakenBack: () => void
}

/** The last reading, its verdict, and whether it is stored: that word stands here only when the transaction is complete. */
export function LastReadStrip({ last, units, onReturn, onTakenBack }: Props) {
  const { commission } = useWorkshop()
  const save = useCommission((state) => state.save)
  const { called, place, figure, verdict, quantity, tolerance, readingId } = last
  const within = tolerance === null ? '' : ` (\u00b1\u2009${figureText(formatTolerance(tolerance, quantity, units))})`
  const takeBack = (): void => {
    const answer = commission.addFacts((row, meta) => [withdraw(row, readingId, meta)])
    if (answer.ok) onTakenBack()
  }
  return (
    <section className="last-read" aria-label={words.lastRead}>
      <button className="last-read-words" type="button" onClick={onReturn}>
        {verdict !== null && <VerdictMark verdict={verdict} />}
        <output>
          {verdict !== null && (
            <strong>
              {verdictText(verdict, quantity, units)}
              {within}
            </strong>
          )}
          <span className="last-read-save" data-save={save}>
            {save === 'saved' ? words.stored : save === 'saving' ? words.storing : words.notStored}
          </span>
          <span className="last-read-place">{`${place}: ${figure}`}</span>
        </output>
      </button>
      {save === 'unsaved' ? (
        <button className="button" type="button" onClick={() => void commission.flush()}>
          {words.retry}
        </button>
      ) : (
        <button
          className="button button-plain"
          type="button"
          aria-label={words.takeBackNamed(called)}
          onClick={takeBack}
        >
          {words.takeBack}
        </button>
      )}
    </section>
  )
}
