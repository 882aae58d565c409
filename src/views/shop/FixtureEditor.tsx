import { FIXTURE_KINDS, type Fixture, type FixtureKind } from '../../core/fixture.ts'
import { addFixture, type NewFixture } from '../../record/changes/fixtures.ts'
import { MOST_FIXTURES } from '../../record/fields.ts'
import { inOrder } from '../../record/order.ts'
import { FIXTURE_KIND_WORDS, FIXTURE_WORDS } from '../../words/fixtures.ts'
import { useShop, useWorkshop } from '../workshop.ts'
import { FixtureRow } from './FixtureRow.tsx'
import './fixtures.css'

/** What a fixture begins as, to be written over. Common practice, no source. */
const FIRST = {
  contourBoard: { kind: 'contourBoard', name: '', radiusMm: 1000 },
  dish: { kind: 'dish', name: '', radiusMm: 6000, diameterMm: 610 },
} as const satisfies Partial<Record<FixtureKind, NewFixture>>

/** The shop's boards, dishes, moulds and forms, each kind in the maker's order. */
export function FixtureEditor() {
  const { shop, newGesture } = useWorkshop()
  const isOpen = useShop((state) => state.status === 'ready')
  const fixtures = useShop((state) => state.shop.fixtures)
  const undo = useShop((state) => state.undo)
  const redo = useShop((state) => state.redo)
  const ordered = inOrder(fixtures)
  const isFull = ordered.length >= MOST_FIXTURES
  return (
    <section className="shop-fixtures" aria-labelledby="fixtures-heading">
      <h2 id="fixtures-heading">{FIXTURE_WORDS.title}</h2>
      <p className="second">{FIXTURE_WORDS.lead}</p>
      <div className="fixture-kinds">
        {FIXTURE_KINDS.map((kind) => (
          <FixturesOfKind
            key={kind}
            kind={kind}
            fixtures={ordered.filter(([, fixture]) => fixture.kind === kind)}
            add={
              kind === 'contourBoard' || kind === 'dish'
                ? {
                    word: FIXTURE_WORDS.add[kind],
                    isOff: !isOpen || isFull,
                    act: () => shop.edit(addFixture(newGesture(), FIRST[kind])),
                  }
                : null
            }
          />
        ))}
      </div>
      {isFull && <p className="second small">{FIXTURE_WORDS.full}</p>}
      <div className="commands">
        <button
          className="button"
          type="button"
          aria-label={FIXTURE_WORDS.undoLabel}
          disabled={!isOpen || !isOfFixtures(undo)}
          onClick={() => shop.undo()}
        >
          {FIXTURE_WORDS.undo}
        </button>
        <button
          className="button"
          type="button"
          aria-label={FIXTURE_WORDS.redoLabel}
          disabled={!isOpen || !isOfFixtures(redo)}
          onClick={() => shop.redo()}
        >
          {FIXTURE_WORDS.redo}
        </button>
      </div>
    </section>
  )
}

/** Whether a step of undo touches fixtures alone: others belong to other parts of the sheet. */
const isOfFixtures = (label: { readonly fields: readonly string[] } | null): boolean =>
  label !== null && label.fields.every((field) => field.startsWith('fixtures.'))

interface KindProps {
  readonly kind: FixtureKind
  readonly fixtures: readonly (readonly [id: string, fixture: Fixture])[]
  /** null: this kind is kept from an instrument. */
  readonly add: { readonly word: string; readonly isOff: boolean; readonly act: () => void } | null
}

function FixturesOfKind({ kind, fixtures, add }: KindProps) {
  const words = FIXTURE_KIND_WORDS[kind]
  const idAt = (place: number): string | null => fixtures[place]?.[0] ?? null
  return (
    <section className="fixture-kind" aria-label={words.many}>
      <h3>{words.many}</h3>
      <p className="second small">{words.lead}</p>
      {fixtures.length === 0 && <p>{words.noneYet}</p>}
      <ol>
        {fixtures.map(([id, fixture], i) => (
          <FixtureRow key={id} id={id} fixture={fixture} place={i + 1} earlierId={idAt(i - 1)} laterId={idAt(i + 1)} />
        ))}
      </ol>
      {add !== null && (
        <button className="button" type="button" disabled={add.isOff} onClick={add.act}>
          {add.word}
        </button>
      )}
    </section>
  )
}
