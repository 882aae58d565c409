import { useEffect, useRef, useState } from 'react'
import { saveFile } from '../../device/saveFile.ts'
import { todayHere } from '../../device/today.ts'
import type { PaperId } from '../../papers/paperId.ts'
import { stagesDone } from '../../record/facts.ts'
import { type PressForm, type PressOrder, type PressProgress, type PressMake, usePress } from '../press.ts'
import { noteWhatLeft } from '../noteWhatLeft.ts'
import { useSignedOffs } from '../signedOffs.ts'
import { useRevisionCode } from '../useRevisionCode.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'

/** How the last order stands. */
export type PressStanding =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly progress: PressProgress | null }
  | { readonly kind: 'done'; readonly name: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed' }

export interface PressControl {
  readonly standing: PressStanding
  readonly make: (papers: readonly PaperId[], form: PressForm) => void
  readonly cancel: () => void
}

/** What papers of the instrument in hand are made from; null while none stands. */
export function usePressOrder(): PressOrder | null {
  const signedOffs = useSignedOffs()
  const doc = useCommission((state) => state.builtDoc)
  const revision = useRevisionCode()
  const facts = useCommission((state) => state.facts)
  const shop = useShop((state) => state.shop)
  const planned = usePlannedPlan()
  if (doc === null) return null
  const done = [...stagesDone(facts).values()]
  const signed = done.flatMap(({ id }) => signedOffs.signedOff(id) ?? [])
  return {
    doc,
    revision,
    shop,
    doneStages: done.map(({ stageId }) => stageId),
    signed,
    dateIso: todayHere(),
    ...planned,
  }
}

/** The plan as drawn, where something was measured that numbers follow. */
function usePlannedPlan(): Pick<PressOrder, 'planned'> {
  const plan = useCommission((state) => state.record?.doc.plan ?? null)
  const taken = useCommission((state) => state.taken)
  return plan === null || taken.length === 0 ? {} : { planned: { plan, taken } }
}

/** Has papers made beside the screen, hands the file over, and notes in the record what left. */
export function usePressRun(): PressControl {
  const { commission } = useWorkshop()
  const press = usePress()
  const order = usePressOrder()
  const [standing, setStanding] = useState<PressStanding>({ kind: 'idle' })
  const run = useRef<PressMake | null>(null)
  // A sheet that is left takes its order with it.
  useEffect(() => () => run.current?.cancel(), [])

  const follow = async (mine: PressMake, revision: string): Promise<void> => {
    const isMine = () => run.current === mine
    try {
      const file = await mine.answer
      if (!isMine()) return
      run.current = null
      if (file === null) return setStanding({ kind: 'cancelled' })
      saveFile(file.name, file.bytes, file.mime)
      // It has left, whatever sheet the maker turns to while what it shows is being marked.
      void noteWhatLeft(commission, revision, mine.prints)
      setStanding({ kind: 'done', name: file.name })
    } catch {
      if (!isMine()) return
      run.current = null
      setStanding({ kind: 'failed' })
    }
  }
  const make = (papers: readonly PaperId[], form: PressForm): void => {
    if (order === null) return
    run.current?.cancel()
    setStanding({ kind: 'running', progress: null })
    const mine = press.make(order, papers, form, (progress) => {
      if (run.current === mine) setStanding({ kind: 'running', progress })
    })
    run.current = mine
    void follow(mine, order.revision)
  }
  return { standing, make, cancel: () => run.current?.cancel() }
}
