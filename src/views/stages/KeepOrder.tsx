import { type FormEvent, useId, useState } from 'react'
import { savePattern } from '../../record/changes/patterns.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { problemSentence } from '../../words/problems.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS

interface Props {
  readonly onClose: () => void
  readonly onKept: (name: string) => void
}

/** Keeps the order of this instrument for the next ones. */
export function KeepOrder({ onClose, onKept }: Props) {
  const { shop, newGesture } = useWorkshop()
  const { doc } = useOrderBench()
  const [name, setName] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null)
  const id = useId()
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    const called = name.trim()
    if (called === '') return setTrouble(words.keepNameMissing)
    const kept = shop.edit(savePattern(newGesture(), called, doc.family, doc.stages, newGesture))
    if (!kept.ok) return setTrouble(problemSentence(kept.problem))
    onKept(called)
    onClose()
  }
  return (
    <Dialog title={words.keepTitle} onClose={onClose}>
      <form className="dialog-body" onSubmit={keep}>
        <div className="field field-text">
          <label className="field-label" htmlFor={id}>
            {words.keepName}
          </label>
          <input
            className="field-input"
            id={id}
            value={name}
            maxLength={120}
            autoComplete="off"
            onChange={({ target }) => setName(target.value)}
          />
        </div>
        {trouble !== null && (
          <p className="field-problem" role="alert">
            {trouble}
          </p>
        )}
        <div className="commands">
          <button className="button button-next" type="submit">
            {words.keep}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
