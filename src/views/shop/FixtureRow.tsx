import type { Fixture } from '../../core/fixture.ts'
import { changeFixture, type FixtureValues, moveFixture, removeFixture } from '../../record/changes/fixtures.ts'
import { FIXTURE_RANGES } from '../../record/fields.ts'
import { LengthField, type LengthRange, type LengthValue } from '../../ui/LengthField.tsx'
import { TextField } from '../../ui/TextField.tsx'
import { FIXTURE_KIND_WORDS, FIXTURE_WORDS, fixtureName } from '../../words/fixtures.ts'
import { useBindingTo } from '../useBinding.ts'
import { useShop, useWorkshop } from '../workshop.ts'

interface Props {
  readonly id: string
  readonly fixture: Fixture
  /** Counted from 1 among its kind. */
  readonly place: number
  /** Its neighbours of the same kind. */
  readonly earlierId: string | null
  readonly laterId: string | null
}

/** One fixture: its name, its measures, and what can be done with it. */
export function FixtureRow({ id, fixture, place, earlierId, laterId }: Props) {
  const { shop } = useWorkshop()
  const isOpen = useShop((state) => state.status === 'ready')
  const called = `${fixtureName(fixture.name, fixture.kind)}, ${FIXTURE_KIND_WORDS[fixture.kind].one} ${place}`
  const name = useFixtureField<string>(id, 'name', fixture.name, (value) => ({ name: value }))
  const commands = [
    {
      word: FIXTURE_WORDS.earlier,
      isOff: earlierId === null,
      act: () => shop.edit(moveFixture(id, earlierId)),
    },
    {
      word: FIXTURE_WORDS.later,
      isOff: laterId === null,
      // Before its later neighbour stands the neighbour itself, moved before this one.
      act: () => laterId !== null && shop.edit(moveFixture(laterId, id)),
    },
    { word: FIXTURE_WORDS.remove, isOff: false, act: () => shop.edit(removeFixture(id)) },
  ]
  return (
    <li className="fixture-row">
      <TextField label={`${FIXTURE_WORDS.name} ${place}`} binding={name} most={200} />
      <FixtureMeasures id={id} fixture={fixture} place={place} />
      <div className="commands">
        {commands.map(({ word, isOff, act }) => (
          <button
            key={word}
            className="button"
            type="button"
            aria-label={`${word}: ${called}`}
            disabled={!isOpen || isOff}
            onClick={act}
          >
            {word}
          </button>
        ))}
      </div>
    </li>
  )
}

function FixtureMeasures({ id, fixture, place }: Pick<Props, 'id' | 'fixture' | 'place'>) {
  const of = { id, place }
  switch (fixture.kind) {
    case 'contourBoard':
      return (
        <Measure
          {...of}
          field="radiusMm"
          label={FIXTURE_WORDS.radius}
          value={fixture.radiusMm}
          range={BOARD_RADIUS}
          values={(radiusMm) => ({ radiusMm })}
        />
      )
    case 'dish':
      return (
        <>
          <Measure
            {...of}
            field="radiusMm"
            label={FIXTURE_WORDS.radius}
            value={fixture.radiusMm}
            range={FIXTURE_RANGES.dishRadiusMm}
            values={(radiusMm) => (radiusMm === 'flat' ? {} : { radiusMm })}
          />
          <Measure
            {...of}
            field="diameterMm"
            label={FIXTURE_WORDS.diameter}
            value={fixture.diameterMm}
            range={FIXTURE_RANGES.dishDiameterMm}
            values={(diameterMm) => (diameterMm === 'flat' ? {} : { diameterMm })}
          />
        </>
      )
    case 'bendingForm':
      return (
        <Measure
          {...of}
          field="insetMm"
          label={FIXTURE_WORDS.inset}
          value={fixture.insetMm}
          range={FIXTURE_RANGES.insetMm}
          values={(insetMm) => (insetMm === 'flat' ? {} : { insetMm })}
        />
      )
    case 'mould':
      return null
  }
}

const BOARD_RADIUS: LengthRange = { ...FIXTURE_RANGES.boardRadiusMm, flat: true }

interface MeasureProps {
  readonly id: string
  readonly place: number
  readonly field: string
  readonly label: string
  readonly value: number | 'flat'
  readonly range: LengthRange
  readonly values: (value: number | 'flat') => FixtureValues
}

function Measure({ id, place, field, label, value, range, values }: MeasureProps) {
  const units = useShop((state) => state.shop.units)
  const binding = useFixtureField<LengthValue>(id, field, value, (next) => (next === null ? {} : values(next)))
  return <LengthField label={`${label} ${place}`} binding={binding} range={range} units={units} />
}

function useFixtureField<Value>(id: string, field: string, value: Value, values: (value: Value) => FixtureValues) {
  const { shop } = useWorkshop()
  const isOpen = useShop((state) => state.status === 'ready')
  return useBindingTo<Value>({
    docId: 'shop',
    name: `fixtures.${id}.${field}`,
    value,
    readOnly: !isOpen,
    take: (next, gesture) => shop.edit(changeFixture(id, values(next)), gesture),
  })
}
