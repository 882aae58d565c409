import { type FormEvent, useId, useState } from 'react'
import { todayHere } from '../../device/today.ts'
import { parseCount } from '../../format/parseCount.ts'
import { MOST_SHARING } from '../../record/bench/factSchemas.ts'
import { sayHours } from '../../record/bench/work.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useWorkshop } from '../workshop.ts'
import { readSaid, SaidHoursFields, type SaidText } from './SaidHours.tsx'

const words = STAGES_PLACE_WORDS

interface Props {
  readonly stageId: string
  readonly onClose: () => void
}

/** Asks how long a stage took, on which day, and how many instruments share it. */
export function SayHours({ stageId, onClose }: Props) {
  const { commission } = useWorkshop()
  const [said, setSaid] = useState<SaidText>(() => ({ hours: '', on: todayHere() }))
  const [shared, setShared] = useState('1')
  const [trouble, setTrouble] = useState<string | null>(null)
  const sharedId = useId()
  const write = (event: FormEvent): void => {
    event.preventDefault()
    const read = readSaid(said)
    if (!read.ok) return setTrouble(read.sentence)
    const count = parseCount(shared)
    if (!count.ok || count.count < 1 || count.count > MOST_SHARING) return setTrouble(words.sharedWrong)
    const { hours, on } = read
    commission.addFacts((row, meta) => [sayHours(row, { stageId, hours, on, sharedBy: count.count }, meta)])
    onClose()
  }
  return (
    <Dialog title={words.hoursTitle} onClose={onClose}>
      <form className="dialog-body" onSubmit={write}>
        <div className="detail-said">
          <SaidHoursFields said={said} onSay={setSaid} />
          <div className="field">
            <label className="field-label" htmlFor={sharedId}>
              {words.shared}
            </label>
            <input
              className="field-input"
              id={sharedId}
              size={4}
              inputMode="numeric"
              autoComplete="off"
              value={shared}
              onChange={({ target }) => setShared(target.value)}
            />
          </div>
        </div>
        <p className="second">{words.sharedHint}</p>
        {trouble !== null && (
          <p className="field-problem" role="alert">
            {trouble}
          </p>
        )}
        <div className="commands">
          <button className="button button-next" type="submit">
            {words.write}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
