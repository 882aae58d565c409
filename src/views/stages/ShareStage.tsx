import { type FormEvent, useEffect, useId, useState } from 'react'
import type { Computed } from '../../core/compute.ts'
import { todayHere } from '../../device/today.ts'
import { pressClock, sayHours } from '../../record/bench/work.ts'
import { signOff } from '../../record/facts.ts'
import { keysOf } from '../../record/stageLinks.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import type { StageState } from '../../record/bench/stageStates.ts'
import type { Sharing } from '../../state/sharing.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { problemSentence } from '../../words/problems.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { numbersBuiltTo } from '../builtTo.ts'
import { useList, useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'
import { sameStage } from './sameStage.ts'
import { readSaid, SaidHoursFields, type SaidText } from './SaidHours.tsx'

const words = STAGES_PLACE_WORDS
const ACTS = ['start', 'stop', 'hours', 'done'] as const
type Act = (typeof ACTS)[number]

interface Props {
  readonly stage: StageInHand
  /** What is proposed at first. */
  readonly first?: Act
  readonly onClose: () => void
}

interface Other {
  readonly id: string
  readonly number: string
  readonly title: string
  readonly stageId: string
  readonly state: StageState
}

/** Asks which instruments share a stage, and what is done for all of them. */
export function ShareStage({ stage, first = 'hours', onClose }: Props) {
  const { docId, doc, titleOf, stateOf } = useOrderBench()
  const { sharing, others } = useOthers(docId, stage)
  const [act, setAct] = useState<Act>(first)
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set())
  const [said, setSaid] = useState<SaidText>(() => ({ hours: '', on: todayHere() }))
  const [trouble, setTrouble] = useState<string | null>(null)
  const name = useId()
  const title = titleOf(stage.id)
  const all: readonly Other[] = [
    { id: docId, number: doc.number, title: doc.title, stageId: stage.id, state: stateOf(stage.id) },
    ...(others ?? []),
  ]
  // A clock that runs is not started, and one that stands is not paused: the shares would come out wrong.
  const cannot = ({ state }: Other): string | null => {
    const isRunning = state.word === 'running'
    if (act === 'start' && isRunning) return words.clockRuns
    return act === 'stop' && !isRunning ? words.clockStands : null
  }
  const chosen = all.filter((one) => cannot(one) === null && (one.id === docId || ticked.has(one.id)))

  const go = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    if (sharing === null) return
    const read = act === 'hours' ? readSaid(said) : null
    if (read?.ok === false) return setTrouble(read.sentence)
    const sharedBy = chosen.length
    const stageOf = new Map(chosen.map(({ id, stageId }) => [id, stageId]))
    const written = await sharing.shareFacts(
      chosen.map(({ id }) => id),
      ({ row, computed }, meta) => {
        const stageId = stageOf.get(row.id) ?? ''
        const entry = row.doc.stages[stageId]
        if (read?.ok) return [sayHours(row, { stageId, hours: read.hours, on: read.on, sharedBy }, meta)]
        if (act === 'start' || act === 'stop') return [pressClock(row, { stageId, act, sharedBy }, meta)]
        if (entry === undefined) return []
        const { numbers } = computed()
        return [signOff(row, stageId, numbersBuiltTo(entry.key, keysOf(row.doc.stages), numbers, entry.own), meta)]
      },
    )
    if (written.ok) return onClose()
    const { id, problem } = written.problem
    setTrouble(words.refused(all.find((one) => one.id === id)?.number ?? '', problemSentence(problem)))
  }
  const toggle = (id: string): void => {
    const next = new Set(ticked)
    if (!next.delete(id)) next.add(id)
    setTicked(next)
    setTrouble(null)
  }

  return (
    <Dialog title={words.severalTitle} onClose={onClose}>
      <form className="dialog-body" onSubmit={(event) => void go(event)}>
        {others === null ? (
          <p className="second">{words.looking}</p>
        ) : (
          <p className="second">{others.length === 0 ? words.severalNone(title) : words.severalLead(title)}</p>
        )}
        <fieldset className="field-choices">
          <legend className="field-label">{words.whatToDo}</legend>
          {ACTS.map((one) => (
            <label className="choice" key={one}>
              <input type="radio" name={name} checked={act === one} onChange={() => setAct(one)} />
              <span>{words.severalActs[one]}</span>
            </label>
          ))}
        </fieldset>
        <ul className="detail-ticks">
          {all.map((one) => (
            <li key={one.id}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={cannot(one) === null && (one.id === docId || ticked.has(one.id))}
                  disabled={one.id === docId || cannot(one) !== null}
                  onChange={() => toggle(one.id)}
                />
                <span>
                  <strong>{one.number}</strong> {one.title}
                  {cannot(one) !== null && <span className="second"> ({cannot(one)})</span>}
                </span>
              </label>
            </li>
          ))}
        </ul>
        {act === 'hours' && (
          <>
            <div className="detail-said">
              <SaidHoursFields said={said} onSay={setSaid} />
            </div>
            <p className="second">{words.sharedHint}</p>
          </>
        )}
        {trouble !== null && (
          <p className="field-problem" role="alert">
            {trouble}
          </p>
        )}
        <div className="commands">
          <button className="button button-next" type="submit" disabled={sharing === null || chosen.length === 0}>
            {words.severalGo(chosen.length)}
          </button>
          <span className="second">{words.severalUndo}</span>
        </div>
      </form>
    </Dialog>
  )
}

/** The other instruments on the bench that have this stage still to be done; null until they have been looked through. */
function useOthers(docId: string, { key, own }: StageInHand) {
  const { openSharing } = useWorkshop()
  const heads = useList((state) => state.heads)
  const [found, setFound] = useState<{
    readonly sharing: Sharing<Computed> | null
    readonly others: readonly Other[] | null
  }>({ sharing: null, others: null })
  const title = own.title
  useEffect(() => {
    let isAsked = true
    const look = async (): Promise<void> => {
      const sharing = await openSharing()
      const open = heads.filter((head) => head.id !== docId && head.deletedAt === null && head.archivedOn === null)
      const others: Other[] = []
      for (const head of open) {
        const read = await sharing.read(head.id)
        const same = read.ok ? sameStage(read.value, { key, ...(title === undefined ? {} : { own: { title } }) }) : null
        if (same !== null)
          others.push({ id: head.id, number: head.number, title: head.title, stageId: same.id, state: same.state })
      }
      if (isAsked) setFound({ sharing, others })
    }
    void look()
    return () => {
      isAsked = false
    }
  }, [openSharing, heads, docId, key, title])
  return found
}
