import { useId, useMemo, useState } from 'react'
import { begunStages } from '../../record/bench/stageStates.ts'
import { applyPattern, refusalOf } from '../../record/changes/stages.ts'
import { FAMILIES } from '../../record/family.ts'
import { startingStages } from '../../record/patterns/stages.ts'
import { orderTaken } from '../../record/orderTaken.ts'
import { copiedStages, orderOfKeys } from '../../record/stageOrders.ts'
import type { Stages } from '../../record/stageLinks.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS

/** Offers the house's orders and the shop's own, and says what comes in, what goes out and what stays before one is taken. */
export function UseOrder({ onClose }: { readonly onClose: () => void }) {
  const { newGesture } = useWorkshop()
  const patterns = useShop((state) => state.shop.patterns)
  const { doc, titleOf, change } = useOrderBench()
  const name = useId()
  const [chosen, setChosen] = useState<string>(doc.family)
  const kept = useKept()
  const families = [doc.family, ...FAMILIES.filter((family) => family !== doc.family)]
  const choices = [
    ...families.map((family) => ({ id: family as string, name: words.houseOrder(FAMILY_WORDS[family]) })),
    ...Object.entries(patterns).map(([id, pattern]) => ({
      id,
      name: `${pattern.name}, ${FAMILY_WORDS[pattern.family].toLowerCase()}`,
    })),
  ]
  const taken = useMemo(() => {
    const own = patterns[chosen]
    const family = FAMILIES.find((one) => one === chosen)
    const wanted: Stages =
      own === undefined
        ? orderOfKeys(startingStages(family ?? doc.family), newGesture)
        : copiedStages(own.stages, newGesture)
    return orderTaken(doc.stages, wanted, kept)
  }, [chosen, patterns, doc.family, doc.stages, kept, newGesture])
  const made = applyPattern(taken.stages)
  const refusal = refusalOf(doc, made)
  return (
    <Dialog title={words.otherTitle} onClose={onClose}>
      <div className="dialog-body">
        <div className="order-choices">
          {choices.map((choice) => (
            <label className="choice" key={choice.id}>
              <input type="radio" name={name} checked={chosen === choice.id} onChange={() => setChosen(choice.id)} />
              <span>{choice.name}</span>
            </label>
          ))}
        </div>
        <div className="order-told" aria-live="polite">
          <p>{words.comeIn(taken.comeIn.length)}</p>
          <p>{words.goOut(taken.goOut.map(titleOf))}</p>
          <p>{words.stay(taken.stay.map(titleOf))}</p>
        </div>
        {refusal !== null && (
          <p className="field-problem" role="alert">
            {refusal.code === 'tooMany' ? words.tooMany(refusal.most) : words.circular(refusal.ring.map(titleOf))}
          </p>
        )}
        <div className="commands">
          <button
            className="button button-next"
            type="button"
            disabled={refusal !== null}
            onClick={() => {
              change(made)
              onClose()
            }}
          >
            {words.takeOrder}
          </button>
        </div>
      </div>
    </Dialog>
  )
}

/** Stages that stay whatever the order: signed off, or anything was done or read on them. */
function useKept(): ReadonlySet<string> {
  const facts = useCommission((state) => state.facts)
  return useMemo(() => begunStages(facts), [facts])
}
