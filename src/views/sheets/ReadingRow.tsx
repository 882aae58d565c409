import type { ReadingRow as ComputedRow } from '../../core/instrument/halfWidths.ts'
import { setReadings } from '../../record/changes/outline.ts'
import { READING_RANGES } from '../../record/fields.ts'
import { isOver } from '../../record/readings.ts'
import { LengthField, type LengthRange, type LengthValue } from '../../ui/LengthField.tsx'
import { READING_LIST_WORDS, READINGS_WORDS } from '../../words/readings.ts'
import { CellFigure } from './CellFigure.tsx'
import { changeHeld, type HeldList, type HeldReading, readingsOf } from './heldReadings.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetField } from './useSheetField.ts'

interface Props {
  readonly held: HeldList
  readonly at: number
  readonly row: HeldReading
  readonly distanceRange: LengthRange
  /** Lays the rows out as they now are; the record has them already. */
  readonly hold: (rows: readonly HeldReading[]) => void
  readonly settle: () => void
  readonly remove: () => void
}

/** One reading: its two lengths, and how far it lies off the curve. */
export function ReadingRow({ held, at, row, distanceRange, hold, settle, remove }: Props) {
  const { readOnly, units, plan, computed } = useSheetBench()
  const { list } = held
  const words = READING_LIST_WORDS[list]
  const [fromTailMm, halfWidthMm] = row.reading
  const label = { distance: `${words.distance} ${at + 1}`, halfWidth: `${words.halfWidth} ${at + 1}` }
  const distance = useReadingField(held, at, hold, 'distance', row.distanceMm, (value) =>
    changeHeld(held, row, value, halfWidthMm),
  )
  const halfWidth = useReadingField(held, at, hold, 'halfWidth', halfWidthMm, (value) =>
    changeHeld(held, row, row.distanceMm, value),
  )
  const off = computed.numbers.readings.find(
    (reading: ComputedRow) => reading.fromTailMm === fromTailMm && reading.halfWidthMm === halfWidthMm,
  )
  const liesOver = off !== undefined && isOver(off.departureMm, plan.outline.halfWidths.readToMm)
  const distanceField = (
    <LengthField key="distance" label={label.distance} binding={distance} range={distanceRange} units={units} />
  )
  const halfWidthField = (
    <LengthField
      key="halfWidth"
      label={label.halfWidth}
      binding={halfWidth}
      range={READING_RANGES.halfWidthMm}
      units={units}
    />
  )
  return (
    <li>
      <div
        className="reading"
        onBlur={(event) => {
          if (!event.currentTarget.contains(event.relatedTarget)) settle()
        }}
      >
        {list === 'rows' ? [distanceField, halfWidthField] : [halfWidthField, distanceField]}
        <p className="reading-off">
          <span className="out-of-sight">{`${READINGS_WORDS.offCurve}: `}</span>
          <CellFigure value={off?.departureMm ?? 'none'} quantity="thickness" units={units} />
          {liesOver && (
            <span className="reading-over">
              <svg viewBox="0 0 24 24" aria-hidden="true">
                <path d="M12 3 22 21 H2 Z" />
              </svg>
              {READINGS_WORDS.over}
            </span>
          )}
        </p>
        <button
          className="button button-plain"
          type="button"
          aria-label={`${READINGS_WORDS.remove}: ${words.heading}, ${READINGS_WORDS.reading} ${at + 1}`}
          disabled={readOnly}
          onClick={remove}
        >
          {READINGS_WORDS.remove}
        </button>
      </div>
    </li>
  )
}

/** A length of a row: goes to the record sorted, and stays in its place on the sheet. */
function useReadingField(
  held: HeldList,
  at: number,
  hold: Props['hold'],
  name: 'distance' | 'halfWidth',
  valueMm: number,
  change: (valueMm: number) => HeldReading,
) {
  const rowsWith = (value: LengthValue) => (typeof value === 'number' ? held.rows.with(at, change(value)) : held.rows)
  const binding = useSheetField<LengthValue>(readingField(held.list, at, name), valueMm, (value) =>
    setReadings(held.list, readingsOf(rowsWith(value))),
  )
  return {
    ...binding,
    take: (value: LengthValue) => {
      hold(rowsWith(value))
      binding.take(value)
    },
  }
}

export const readingField = (list: HeldList['list'], at: number, name: 'distance' | 'halfWidth') =>
  `plan.outline.halfWidths.${list}.${at}.${name}`
