import { useMemo, useState } from 'react'
import { printPage } from '../device/printPage.ts'
import { stagePaper } from '../papers/paperId.ts'
import { todayHere } from '../device/today.ts'
import type { StageThen } from '../papers/stageThen.ts'
import { stagesDone } from '../record/facts.ts'
import { inOrder } from '../record/order.ts'
import { takeAskedStage } from './paperChoice.ts'
import { StageSheetView } from './StageSheetView.tsx'
import { usePressOrder } from './fullSize/usePressRun.ts'
import { noteWhatLeft } from './noteWhatLeft.ts'
import { usePress } from './press.ts'
import { useSignedOffs } from './signedOffs.ts'
import { useRevisionCode } from './useRevisionCode.ts'
import { useCommission, useShop, useWorkshop } from './workshop.ts'

/** The stage sheet of the instrument in hand. */
export function PaperView() {
  const doc = useCommission((state) => state.builtDoc)
  const revision = useRevisionCode()
  const computed = useCommission((state) => state.computed)
  const facts = useCommission((state) => state.facts)
  const shop = useShop((state) => state.shop)
  const { commission, computedOf } = useWorkshop()
  const signedOffs = useSignedOffs()
  const press = usePress()
  const order = usePressOrder()
  const [asked] = useState(takeAskedStage)
  const plan = useCommission((state) => state.record?.doc.plan ?? null)
  const taken = useCommission((state) => state.taken)
  const planned = useMemo(
    () => (plan === null || taken.length === 0 ? null : { numbers: computedOf(plan).numbers, taken }),
    [plan, taken, computedOf],
  )
  if (doc === null || computed === null) return null
  const print = (stageIds: readonly string[]): void => {
    printPage()
    if (order === null) return
    void noteWhatLeft(commission, revision, press.marks(order, stageIds.map(stagePaper)).answer)
  }
  const done = stagesDone(facts)
  const thenOf = (stageId: string): StageThen | undefined => {
    const fact = done.get(stageId)
    const then = fact === undefined ? null : signedOffs.builtAt(fact.id)
    return then === null ? undefined : { ...then.signed, plan: then.plan, computed: then.computed }
  }
  const stages = inOrder(doc.stages).map(([id, { key }]) => ({ id, key }))
  return (
    <StageSheetView
      doc={doc}
      computed={computed}
      planned={planned}
      shop={shop}
      revisionCode={revision}
      dateIso={todayHere()}
      stages={stages}
      doneStages={new Set(done.keys())}
      thenOf={thenOf}
      onPrint={print}
      {...(asked !== null && doc.stages[asked] !== undefined ? { firstChosen: [asked] } : {})}
    />
  )
}
