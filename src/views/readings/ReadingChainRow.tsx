import { useState } from 'react'
import { aboutNumber } from '../../core/catalogue.ts'
import { formatMoment } from '../../format/formatMoment.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatReading } from '../../format/typedReading.ts'
import { effectiveTolerance } from '../../papers/effectiveTolerance.ts'
import type { Measured } from '../../record/bench/measured.ts'
import { type ReadingChain, readingStanding } from '../../record/bench/readingStanding.ts'
import { withdraw } from '../../record/facts.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { READINGS_PAGE_WORDS } from '../../words/measured.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'
import { becameText } from './becameText.ts'
import { calledReading, placeOfReading } from './calledReading.ts'
import { CorrectReading } from './CorrectReading.tsx'
import { VerdictText } from './VerdictText.tsx'

const words = READINGS_PAGE_WORDS

/** A reading with its corrections under it, each as it was taken. */
export function ReadingChainRow({ chain }: { readonly chain: ReadingChain }) {
  return (
    <li className="measured-chain">
      <ReadingRow reading={chain.first} />
      {chain.corrections.map((one) => (
        <ReadingRow key={one.id} reading={one} />
      ))}
    </li>
  )
}

function ReadingRow({ reading }: { readonly reading: Measured }) {
  const { commission } = useWorkshop()
  const [isMending, setMending] = useState(false)
  const doc = useCommission((state) => state.record?.doc ?? null)
  const builtPlan = useCommission((state) => state.builtDoc?.plan ?? null)
  const computed = useCommission((state) => state.computed)
  const taken = useCommission((state) => state.taken)
  const outside = useCommission((state) => state.outside)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const { units, tolerances } = useShop((state) => state.shop)
  if (doc === null || builtPlan === null || computed === null) return null
  const { number, value, planned, gauge, at, replaces } = reading
  const { quantity } = aboutNumber(number)
  const place = placeOfReading(reading, computed.numbers, builtPlan, units)
  const called = calledReading(reading, place)
  const standing = readingStanding(reading, { plan: doc.plan, taken, outside })
  const tolerance = effectiveTolerance(number, doc.tolerances, tolerances)
  const mayCount = standing.kind !== 'again' && standing.kind !== 'record'
  const circumstances = [formatMoment(at), gauge === '' ? '' : words.withGauge(gauge)].filter((part) => part !== '')
  return (
    <article className="measured-row" data-kind={standing.kind} data-mends={replaces !== null} aria-label={called}>
      <div className="measured-what">
        {replaces === null ? <h3>{NUMBER_NAMES[number]}</h3> : <h3>{words.corrected}</h3>}
        {replaces === null && place !== '' && <p>{place}</p>}
        <p className="second small">{circumstances.join(', ')}</p>
      </div>
      <p className="measured-figure">
        <span className="field-label">{words.readAs}</span>
        <FigureText figure={formatReading(value, quantity, units)} />
      </p>
      <p className="measured-asked">
        <span className="field-label">{words.asked}</span>
        <FigureText figure={formatQuantity(planned, quantity, units)} words={FIGURE_WORDS} />
      </p>
      <p className="measured-verdict">
        <span className="field-label">{words.off}</span>
        <VerdictText number={number} value={value} asked={planned} tolerance={tolerance} units={units} />
      </p>
      <p className="measured-became">{becameText(standing, units)}</p>
      <div className="commands measured-ways">
        {mayCount && (
          <label className="check">
            <input
              type="checkbox"
              checked={reading.isUsed}
              disabled={isLocked}
              aria-label={words.countsNamed(called)}
              onChange={(event) => commission.switchReading(reading.id, event.target.checked)}
            />
            <span aria-hidden="true">{words.counts}</span>
          </label>
        )}
        {reading.isLatest && (
          <button
            className="button button-plain"
            type="button"
            disabled={isLocked || isMending}
            aria-label={words.correctNamed(called)}
            onClick={() => setMending(true)}
          >
            {words.correct}
          </button>
        )}
        <button
          className="button button-plain"
          type="button"
          disabled={isLocked}
          aria-label={words.withdrawNamed(called)}
          onClick={() => commission.addFacts((row, meta) => [withdraw(row, reading.id, meta)])}
        >
          {words.withdraw}
        </button>
      </div>
      {isMending && reading.isLatest && (
        <CorrectReading reading={reading} called={called} onDone={() => setMending(false)} />
      )}
    </article>
  )
}
