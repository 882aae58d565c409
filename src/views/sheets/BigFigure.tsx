import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { readNumbers } from '../../core/numbers.ts'
import { standingOf } from '../../record/standing.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { ReadingMark } from '../../ui/ReadingMark.tsx'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FROM_READING_WORDS } from '../../words/fromReading.ts'
import { ESTIMATE_MARK, FIGURE_WORDS } from '../../words/sheets.ts'
import { plannedAtPlace, plannedBeside, plannedText } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { sameNumber, useSheetPointer } from './sheetPointer.ts'

interface Props {
  readonly number: NumberKey
  readonly row?: number | null
  /** A value of a place that has no row of its own. */
  readonly value?: Figure
  /** What the plan has at that place. */
  readonly plannedValue?: Figure | null
  /** Said in place of the number's own name. */
  readonly name?: string
  readonly size: 44 | 72
}

/** One number as large as an arm is long. Its name opens what it is; the figure lights its dimension. */
export function BigFigure({ number, row = null, value, plannedValue, name, size }: Props) {
  const bench = useSheetBench()
  const { computed, plan, units } = bench
  const { lit, light, openHelp } = useSheetPointer()
  const about = CATALOGUE[number]
  const shown = value ?? readNumbers(computed.numbers, number)[row ?? 0] ?? 'none'
  const ref = { key: number, row }
  const isLit = sameNumber(lit, ref)
  const figure = formatQuantity(shown, about.quantity, units)
  const before =
    value === undefined
      ? plannedBeside(bench, number, row ?? 0)
      : plannedAtPlace(bench, number, value, plannedValue ?? value)
  const title = name ?? NUMBER_NAMES[number]
  return (
    <div className="big-figure" data-size={size}>
      <button className="number-name" type="button" onClick={() => openHelp(number)}>
        {title}
        {standingOf(number, plan) === 'estimate' && ` (${ESTIMATE_MARK})`}
        {before !== null && <ReadingMark />}
      </button>
      <button className="big-figure-value" type="button" aria-pressed={isLit} onClick={() => light(isLit ? null : ref)}>
        <span className="out-of-sight">{title}: </span>
        <span data-tight={figure.unit === '°' || figure.unit === '"'}>
          <FigureText figure={figure} words={FIGURE_WORDS} />
        </span>
      </button>
      {before !== null && (
        <p className="second small">{FROM_READING_WORDS.planned(plannedText(before, number, units))}</p>
      )}
    </div>
  )
}
