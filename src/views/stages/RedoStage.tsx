import { type FormEvent, useId, useState } from 'react'
import { redoStage } from '../../record/facts.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useWorkshop } from '../workshop.ts'

const words = STAGES_PLACE_WORDS
const MOST_REASON = 2000

interface Props {
  readonly stageId: string
  readonly onClose: () => void
}

/** Asks why a stage that was signed off is done again. */
export function RedoStage({ stageId, onClose }: Props) {
  const { commission } = useWorkshop()
  const [reason, setReason] = useState('')
  const id = useId()
  const redo = (event: FormEvent): void => {
    event.preventDefault()
    commission.addFacts((row, meta) => [redoStage(row, stageId, reason.trim(), meta)])
    onClose()
  }
  return (
    <Dialog title={words.redoTitle} onClose={onClose}>
      <form className="dialog-body" onSubmit={redo}>
        <div className="field field-text">
          <label className="field-label" htmlFor={id}>
            {words.reason}
          </label>
          <input
            className="field-input"
            id={id}
            value={reason}
            maxLength={MOST_REASON}
            autoComplete="off"
            onChange={({ target }) => setReason(target.value)}
          />
        </div>
        <p className="second">{words.redoLead}</p>
        <div className="commands">
          <button className="button button-next" type="submit">
            {words.redoGo}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
