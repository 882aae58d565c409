import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { distanceOfXMm, isPlaceOnCentreline } from '../../core/instrument/placeByX.ts'
import { readNumbers } from '../../core/numbers.ts'
import { standingOf } from '../../record/standing.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { ReadingMark } from '../../ui/ReadingMark.tsx'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { ORIGIN_WORDS } from '../../words/measuring.ts'
import { FROM_READING_WORDS } from '../../words/fromReading.ts'
import { ESTIMATE_MARK, FIGURE_WORDS } from '../../words/sheets.ts'
import { plannedBeside, plannedText } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'

interface Props {
  readonly keys: readonly NumberKey[]
  /** What this instrument has not (a rod, a tenon) gets no line. */
  readonly leavesOutNone?: boolean
}

/** Numbers that stand once, a line each: name, value, the same from the maker's origin where it is a place, tolerance. */
export function NumberList({ keys, leavesOutNone = false }: Props) {
  const bench = useSheetBench()
  const { computed, plan, units, origin, tolerances } = bench
  const { openHelp } = useSheetPointer()
  const { numbers, geometry } = computed
  const layout = { origin, lengthMm: geometry.lengthMm, saddleLineMm: numbers.scale.saddleLineMm }
  const told = (value: Figure, key: NumberKey): Figure | null =>
    origin !== 'tail' && typeof value === 'number' && isPlaceOnCentreline(key) ? distanceOfXMm(layout, value) : null
  const toleranceOf = (key: NumberKey): number | null => {
    const said = tolerances.own[key] !== undefined ? tolerances.own[key] : tolerances.shop[key]
    return said !== undefined ? said : CATALOGUE[key].tolerance
  }
  return (
    <table className="table number-list">
      <thead>
        <tr>
          <th scope="col">{TABLE_WORDS.name}</th>
          <th scope="col">{TABLE_WORDS.value}</th>
          <th scope="col">{TABLE_WORDS.tolerance}</th>
        </tr>
      </thead>
      <tbody>
        {keys.map((key) => {
          const { quantity } = CATALOGUE[key]
          const value = readNumbers(numbers, key)[0] ?? 'none'
          if (leavesOutNone && value === 'none') return null
          const fromOrigin = told(value, key)
          const tolerance = toleranceOf(key)
          const before = plannedBeside(bench, key)
          return (
            <tr key={key}>
              <th scope="row">
                <button className="number-name" type="button" onClick={() => openHelp(key)}>
                  {NUMBER_NAMES[key]}
                </button>
                {standingOf(key, plan) === 'estimate' && <em> ({ESTIMATE_MARK})</em>}
                {before !== null && <ReadingMark />}
              </th>
              <td>
                <FigureText figure={formatQuantity(value, quantity, units)} words={FIGURE_WORDS} />
                {fromOrigin !== null && (
                  <span className="second small">
                    {' '}
                    (<FigureText figure={formatQuantity(fromOrigin, quantity, units)} /> {ORIGIN_WORDS[origin].from})
                  </span>
                )}
                {before !== null && (
                  <span className="second small"> {FROM_READING_WORDS.planned(plannedText(before, key, units))}</span>
                )}
              </td>
              <td>{tolerance === null ? '' : `± ${figureText(formatQuantity(tolerance, quantity, units))}`}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
