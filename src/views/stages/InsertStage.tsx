import { type FormEvent, useId, useState } from 'react'
import { addOwnStage, addStage } from '../../record/changes/stages.ts'
import { STAGE_KEYS, type StageKey } from '../../record/patterns/stages.ts'
import { keysOf } from '../../record/stageLinks.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { STAGE_TITLES } from '../../words/stageTitles.ts'
import { useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS
const OF_HOUSE = STAGE_KEYS.filter((key) => key !== 'ownWork')

interface Props {
  readonly side: 'before' | 'after'
  /** What the stage is called that it comes in beside. */
  readonly beside: string
  readonly beforeId: string | null
  readonly onShow: (id: string) => void
  readonly onClose: () => void
}

/** Asks what comes in: a stage of the house, those that are not there first, or work of the maker's own. */
export function InsertStage({ side, beside, beforeId, onShow, onClose }: Props) {
  const { newGesture } = useWorkshop()
  const { doc, change } = useOrderBench()
  const present = keysOf(doc.stages)
  const choices = [
    ...OF_HOUSE.filter((key) => !present.includes(key)),
    ...OF_HOUSE.filter((key) => present.includes(key)),
  ]
  const [isOwn, setOwn] = useState(true)
  const [title, setTitle] = useState('')
  const [key, setKey] = useState<StageKey>(choices[0] ?? 'chooseWood')
  const [trouble, setTrouble] = useState<string | null>(null)
  const ids = { kind: useId(), title: useId(), key: useId() }

  const insert = (event: FormEvent): void => {
    event.preventDefault()
    const called = title.trim()
    if (isOwn && called === '') return setTrouble(words.ownTitleMissing)
    const id = newGesture()
    change(isOwn ? addOwnStage(id, called, beforeId) : addStage(id, key, beforeId))
    onShow(id)
    onClose()
  }
  const choice = (own: boolean, word: string) => (
    <label className="choice">
      <input type="radio" name={ids.kind} checked={isOwn === own} onChange={() => setOwn(own)} />
      <span>{word}</span>
    </label>
  )
  return (
    <Dialog title={words.insertTitle} onClose={onClose}>
      <form className="dialog-body" onSubmit={insert}>
        <p className="second">{side === 'before' ? words.insertBeforeLead(beside) : words.insertAfterLead(beside)}</p>
        <div className="field-choices">
          {choice(true, words.ownStage)}
          {choice(false, words.ofHouse)}
        </div>
        {isOwn ? (
          <div className="field field-text">
            <label className="field-label" htmlFor={ids.title}>
              {words.ownTitle}
            </label>
            <input
              className="field-input"
              id={ids.title}
              value={title}
              maxLength={120}
              autoComplete="off"
              onChange={({ target }) => setTitle(target.value)}
            />
          </div>
        ) : (
          <label className="field field-text" htmlFor={ids.key}>
            <span className="field-label">{words.ofHouse}</span>
            <select
              className="field-input"
              id={ids.key}
              value={key}
              onChange={({ target }) => setKey(target.value as StageKey)}
            >
              {choices.map((one) => (
                <option key={one} value={one}>
                  {STAGE_TITLES[one]}
                </option>
              ))}
            </select>
          </label>
        )}
        {trouble !== null && (
          <p className="field-problem" role="alert">
            {trouble}
          </p>
        )}
        <div className="commands">
          <button className="button button-next" type="submit">
            {words.insert}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
