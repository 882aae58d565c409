import { type FormEvent, useState } from 'react'
import { setStageDetail } from '../../record/changes/stages.ts'
import { CAUTION_KEYS } from '../../record/patterns/cautions.ts'
import { PART_KEYS, type PartKey } from '../../record/patterns/partKeys.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { CAUTION_WORDS } from '../../words/cautions.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { PART_KEY_WORDS } from '../../words/stageWork.ts'
import { useOrderBench } from './orderBench.ts'
import { StageFixtures } from './StageFixtures.tsx'

const words = STAGES_PLACE_WORDS

interface Props {
  readonly stage: StageInHand
}

/** What has to be done, to be here and to be minded before and while a stage is worked at. */
export function StageNeeds({ stage }: Props) {
  return (
    <>
      <details className="detail-part">
        <summary>{words.after}</summary>
        <AfterStages stage={stage} />
      </details>
      <details className="detail-part">
        <summary>{words.fixtures}</summary>
        <StageFixtures stage={stage} />
      </details>
      <details className="detail-part">
        <summary>{words.partsHere}</summary>
        <Parts stage={stage} />
      </details>
      <details className="detail-part">
        <summary>{words.cautions}</summary>
        <Cautions stage={stage} />
      </details>
    </>
  )
}

function AfterStages({ stage }: Props) {
  const { stages, titleOf, change } = useOrderBench()
  // Later ones only where it waits for them all the same: so that they can be taken off.
  const offered = stages.filter(({ id, place }) => place < stage.place || stage.after.includes(id))
  if (offered.length === 0) return <p className="second">{words.noEarlier}</p>
  return (
    <ul className="detail-ticks">
      {offered.map(({ id, place }) => (
        <Tick
          key={id}
          label={`${place} ${titleOf(id)}${place > stage.place ? ` (${words.laterNeeds})` : ''}`}
          isOn={stage.after.includes(id)}
          onTick={() => change(setStageDetail(stage.id, 'after', toggled(stage.after, id)))}
        />
      ))}
    </ul>
  )
}

function Parts({ stage }: Props) {
  const { change, isLocked } = useOrderBench()
  const [other, setOther] = useState('')
  const own = stage.parts.filter((part) => !PART_KEYS.includes(part as PartKey))
  const set = (parts: readonly string[]) => change(setStageDetail(stage.id, 'parts', [...parts]))
  const add = (event: FormEvent): void => {
    event.preventDefault()
    const part = other.trim()
    if (part === '' || stage.parts.includes(part)) return
    set([...stage.parts, part])
    setOther('')
  }
  return (
    <>
      <ul className="detail-ticks">
        {[...PART_KEYS, ...own].map((part) => (
          <Tick
            key={part}
            label={PART_KEY_WORDS[part as PartKey] ?? part}
            isOn={stage.parts.includes(part)}
            onTick={() => set(toggled(stage.parts, part))}
          />
        ))}
      </ul>
      <form className="commands detail-other" onSubmit={add}>
        <input
          className="field-input"
          aria-label={words.otherPart}
          placeholder={words.otherPart}
          value={other}
          maxLength={120}
          disabled={isLocked}
          onChange={({ target }) => setOther(target.value)}
        />
        <button className="button" type="submit" disabled={isLocked}>
          {words.addPart}
        </button>
      </form>
    </>
  )
}

function Cautions({ stage }: Props) {
  const { change } = useOrderBench()
  return (
    <ul className="detail-ticks">
      {CAUTION_KEYS.map((key) => (
        <Tick
          key={key}
          label={CAUTION_WORDS[key].title}
          isOn={stage.cautions.includes(key)}
          onTick={() => change(setStageDetail(stage.id, 'cautions', [...toggled(stage.cautions, key)]))}
        />
      ))}
    </ul>
  )
}

interface TickProps {
  readonly label: string
  readonly isOn: boolean
  readonly onTick: () => void
}

function Tick({ label, isOn, onTick }: TickProps) {
  const { isLocked } = useOrderBench()
  return (
    <li>
      <label className="check">
        <input type="checkbox" checked={isOn} disabled={isLocked} onChange={onTick} />
        <span>{label}</span>
      </label>
    </li>
  )
}

const toggled = <One extends string>(all: readonly One[], one: One): One[] =>
  all.includes(one) ? all.filter((other) => other !== one) : [...all, one]
