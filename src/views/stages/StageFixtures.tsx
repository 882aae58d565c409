import { setStageDetail } from '../../record/changes/stages.ts'
import { FIXTURE_KEYS, type FixtureKey } from '../../record/patterns/fixtureKeys.ts'
import type { FixtureInHand, StageInHand } from '../../record/stageInHand.ts'
import { FIXTURE_HOLDS } from '../../record/stageSchema.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { STAGE_FIXTURE_WORDS } from '../../words/stageWork.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS

/** What a stage takes up in the shop, how it is held, and until when. */
export function StageFixtures({ stage }: { readonly stage: StageInHand }) {
  const { stages, titleOf, change, isLocked } = useOrderBench()
  const { fixtures } = stage
  const set = (next: readonly FixtureInHand[]) => change(setStageDetail(stage.id, 'fixtures', [...next]))
  const mend = (at: number, values: Partial<FixtureInHand>) =>
    set(fixtures.map((use, i) => (i === at ? { ...use, ...values } : use)))
  const later = stages.filter(({ place }) => place > stage.place)
  const free = FIXTURE_KEYS.find((key) => !fixtures.some(({ fixture }) => fixture === key))
  return (
    <>
      <ul className="detail-fixtures">
        {fixtures.map(({ fixture, held, until }, at) => {
          const called = nameOf(fixture)
          const kinds = FIXTURE_KEYS.includes(fixture as FixtureKey) ? FIXTURE_KEYS : [fixture, ...FIXTURE_KEYS]
          return (
            // Two uses may be of one kind: only their place tells them apart.
            // oxlint-disable-next-line react/no-array-index-key
            <li key={at}>
              <Choice
                label={words.fixture}
                value={fixture}
                choices={kinds.map((key) => [key, nameOf(key)])}
                onChoose={(next) => mend(at, { fixture: next })}
              />
              <Choice
                label={words.held}
                value={held}
                choices={FIXTURE_HOLDS.map((one) => [one, words.holds[one]])}
                onChoose={(next) =>
                  mend(at, {
                    held: next as FixtureInHand['held'],
                    until: next === 'until' ? (later[0]?.id ?? null) : null,
                  })
                }
              />
              {held === 'until' && (
                <Choice
                  label={words.untilStage}
                  value={until ?? ''}
                  choices={[
                    ['', words.untilSet],
                    ...later.map(({ id, place }): [string, string] => [id, `${place} ${titleOf(id)}`]),
                  ]}
                  onChoose={(next) => mend(at, { until: next === '' ? null : next })}
                />
              )}
              <button
                className="button button-plain"
                type="button"
                disabled={isLocked}
                aria-label={words.removeFixture(called)}
                onClick={() => set(fixtures.filter((_, i) => i !== at))}
              >
                {words.removeShort}
              </button>
            </li>
          )
        })}
      </ul>
      {free !== undefined && (
        <button
          className="button"
          type="button"
          disabled={isLocked}
          onClick={() => set([...fixtures, { fixture: free, held: 'working', until: null }])}
        >
          {words.addFixture}
        </button>
      )}
    </>
  )
}

const nameOf = (fixture: string): string => STAGE_FIXTURE_WORDS[fixture as FixtureKey] ?? fixture

interface ChoiceProps {
  readonly label: string
  readonly value: string
  readonly choices: readonly (readonly [value: string, word: string])[]
  readonly onChoose: (value: string) => void
}

function Choice({ label, value, choices, onChoose }: ChoiceProps) {
  const { isLocked } = useOrderBench()
  return (
    <label className="field">
      <span className="field-label">{label}</span>
      <select
        className="field-input"
        value={value}
        disabled={isLocked}
        onChange={({ target }) => onChoose(target.value)}
      >
        {choices.map(([one, word]) => (
          <option key={one} value={one}>
            {word}
          </option>
        ))}
      </select>
    </label>
  )
}
