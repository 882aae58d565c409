import { useId } from 'react'
import { READINGS_WORDS } from '../../words/readings.ts'
import { BigFigure } from './BigFigure.tsx'
import { PlanFieldControl } from './PlanFieldControl.tsx'
import { ReadingTable } from './ReadingTable.tsx'
import { useSheetBench } from './sheetBench.ts'
import './readings.css'

const LISTS = ['rows', 'tailRows', 'neckRows'] as const

/** A body measured with a rule: what was read, and how the curve lies to it. */
export function ReadingsEditor() {
  const { plan } = useSheetBench()
  const id = useId()
  const isEmpty = LISTS.every((list) => plan.outline.halfWidths[list].length === 0)
  return (
    <section className="readings-editor" aria-labelledby={id}>
      <h2 id={id}>{READINGS_WORDS.heading}</h2>
      {isEmpty ? (
        <div className="readings-lesson">
          <HalfBodyUnderRule />
          <p>{READINGS_WORDS.lead}</p>
          <PlanFieldControl field="outline.halfWidths.readToMm" />
        </div>
      ) : (
        <>
          <div className="big-figures">
            <BigFigure number="fit.largestDepartureMm" size={44} />
            <BigFigure number="fit.inflections" size={44} />
            <PlanFieldControl field="outline.halfWidths.readToMm" />
          </div>
          <p className="second small">{READINGS_WORDS.offNote}</p>
        </>
      )}
      <div className="readings-tables">
        {LISTS.map((list) => (
          <ReadingTable key={list} list={list} />
        ))}
      </div>
    </section>
  )
}

/** How a body is read: the centreline, half the outline over it, the rule square across at even steps. */
function HalfBodyUnderRule() {
  return (
    <svg className="readings-drawing" viewBox="0 0 260 120" role="img" aria-label={READINGS_WORDS.drawing}>
      <path
        className="wide"
        d="M20 100 C20 30 50 14 84 14 C118 14 128 46 152 46 C172 46 180 28 206 28 C236 28 240 60 240 86 V100"
      />
      <path className="centre" d="M8 100 H252" />
      <path d="M40 100 V43 M62 100 V20 M84 100 V14 M106 100 V22 M128 100 V39 M150 100 V46 M172 100 V40 M194 100 V30 M216 100 V29" />
      <path d="M36 43 H44 M58 20 H66 M80 14 H88 M102 22 H110 M124 39 H132 M146 46 H154 M168 40 H176 M190 30 H198 M212 29 H220" />
    </svg>
  )
}
