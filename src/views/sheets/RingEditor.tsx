import { nextRing } from '../../core/instrument/nextRing.ts'
import { ringsInOrder } from '../../core/instrument/rosette.ts'
import type { RingPlan } from '../../core/plan.ts'
import { addRing, changeRing, moveRing, removeRing } from '../../record/changes/rings.ts'
import { MOST_RINGS, RING_RANGES } from '../../record/fields.ts'
import { ChoiceField } from '../../ui/ChoiceField.tsx'
import { CountField } from '../../ui/CountField.tsx'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { FIELD_WORDS, JOIN_WORDS, RING_WORDS } from '../../words/fields.ts'
import { ROSETTE_WORDS } from '../../words/bodySheets.ts'
import { BuiltRingLine } from './BuiltLine.tsx'
import { useSheetBench } from './sheetBench.ts'
import { useSheetField } from './useSheetField.ts'

const JOINS = (['closed', 'openUnderBoard'] as const).map((value) => ({ value, label: JOIN_WORDS[value] }))

/** The rings of the rosette in the maker's order. */
export function RingEditor() {
  const bench = useSheetBench()
  const rings = ringsInOrder(bench.plan.rosette)
  const add = (): void => {
    const { soundhole, rosette } = bench.plan
    const ring = nextRing(soundhole.radiusMm, Object.values(rosette.rings), rosette.cutterMm)
    bench.edit(addRing(bench.newId(), ring), bench.newId())
  }
  return (
    <section className="sheet-fields" data-field="plan.rosette.rings" aria-labelledby="rings-heading">
      <h2 id="rings-heading">{FIELD_WORDS['rosette.rings'].name}</h2>
      {rings.length === 0 && <p>{ROSETTE_WORDS.none}</p>}
      <ol className="pieces">
        {rings.map(({ id, ring }, i) => (
          <li className="piece" key={id}>
            <h3>{`${ROSETTE_WORDS.ring} ${i + 1}`}</h3>
            <RingValues
              id={id}
              ring={ring}
              place={i + 1}
              gapMm={bench.computed.numbers.rosette.rings[i]?.gapMm ?? null}
            />
            <div className="commands">
              <button
                className="button"
                type="button"
                aria-label={`${ROSETTE_WORDS.earlier}: ${ROSETTE_WORDS.ring} ${i + 1}`}
                disabled={bench.readOnly || i === 0}
                onClick={() => bench.edit(moveRing(id, rings[i - 1]?.id ?? null), bench.newId())}
              >
                {ROSETTE_WORDS.earlier}
              </button>
              <button
                className="button"
                type="button"
                aria-label={`${ROSETTE_WORDS.later}: ${ROSETTE_WORDS.ring} ${i + 1}`}
                disabled={bench.readOnly || i === rings.length - 1}
                onClick={() => bench.edit(moveRing(id, rings[i + 2]?.id ?? null), bench.newId())}
              >
                {ROSETTE_WORDS.later}
              </button>
              <button
                className="button"
                type="button"
                aria-label={`${ROSETTE_WORDS.remove}: ${ROSETTE_WORDS.ring} ${i + 1}`}
                disabled={bench.readOnly}
                onClick={() => bench.edit(removeRing(id), bench.newId())}
              >
                {ROSETTE_WORDS.remove}
              </button>
            </div>
          </li>
        ))}
      </ol>
      <button className="button" type="button" disabled={bench.readOnly || rings.length >= MOST_RINGS} onClick={add}>
        {ROSETTE_WORDS.add}
      </button>
      {rings.length >= MOST_RINGS && <p className="second small">{ROSETTE_WORDS.full}</p>}
    </section>
  )
}

interface ValuesProps {
  readonly id: string
  readonly ring: RingPlan
  readonly place: number
  readonly gapMm: number | null
}

function RingValues({ id, ring, place, gapMm }: ValuesProps) {
  const { units } = useSheetBench()
  const name = (field: string) => `plan.rosette.rings.${id}.${field}`
  const label = (field: keyof typeof RING_WORDS) => `${RING_WORDS[field].name} ${place}`
  const asNumber = (value: LengthValue, before: number): number => (typeof value === 'number' ? value : before)
  const inner = useSheetField<LengthValue>(name('innerRadiusMm'), ring.innerRadiusMm, (value) =>
    changeRing(id, { innerRadiusMm: asNumber(value, ring.innerRadiusMm) }),
  )
  const outer = useSheetField<LengthValue>(name('outerRadiusMm'), ring.outerRadiusMm, (value) =>
    changeRing(id, { outerRadiusMm: asNumber(value, ring.outerRadiusMm) }),
  )
  const join = useSheetField<RingPlan['join']>(name('join'), ring.join, (value) => changeRing(id, { join: value }))
  const gap = useSheetField<LengthValue>(name('gapMm'), ring.gapMm, (value) =>
    changeRing(id, { gapMm: value === 'flat' ? null : value }),
  )
  const tiles = useSheetField<number | null>(name('tileCount'), ring.tileCount, (value) =>
    changeRing(id, { tileCount: value }),
  )
  return (
    <div className="piece-values" data-long={units.bodyLength === 'fractionalInch'}>
      <LengthField label={label('innerRadiusMm')} binding={inner} range={RING_RANGES.innerRadiusMm} units={units} />
      <LengthField label={label('outerRadiusMm')} binding={outer} range={RING_RANGES.outerRadiusMm} units={units} />
      <BuiltRingLine id={id} value="innerRadiusMm" />
      <BuiltRingLine id={id} value="outerRadiusMm" />
      <ChoiceField label={label('join')} binding={join} choices={JOINS} />
      {ring.join === 'openUnderBoard' && (
        <LengthField label={label('gapMm')} binding={gap} range={RING_RANGES.gapMm} units={units} solvedMm={gapMm} />
      )}
      <CountField
        label={label('tileCount')}
        binding={tiles}
        range={RING_RANGES.tileCount}
        emptyMeans={ROSETTE_WORDS.plainStrip}
      />
    </div>
  )
}
