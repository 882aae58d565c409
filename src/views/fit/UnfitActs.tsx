import { useId, useState } from 'react'
import type { PlanField } from '../../core/planFields.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { fieldsBehind, takeChangeBack } from '../../record/changes/takeChangeBack.ts'
import { planValue } from '../../record/modelDifferences.ts'
import type { BuiltFit, StageFit } from '../../state/builtFit.ts'
import { keepAsBuilt, redoToPlan } from '../../state/keepAsBuilt.ts'
import { BUILT_FIT_WORDS } from '../../words/builtFit.ts'
import { fieldCalled } from '../../words/models.ts'
import { PlanValue } from '../model/PlanValue.tsx'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'
import { useBuiltFits } from './useBuiltFit.ts'

const words = BUILT_FIT_WORDS
const MOST_REASON = 2000

interface Props {
  readonly fit: BuiltFit
  readonly of: StageFit
  readonly title: string
}

/** The three ways on from work that no longer fits. Each is one action, and can be undone. */
export function UnfitActs({ fit, of, title }: Props) {
  const { commission, newGesture } = useWorkshop()
  const { fits } = useBuiltFits()
  const isLocked = useCommission((state) => state.readOnly !== null)
  const units = useShop((state) => state.shop.units)
  const facts = useCommission((state) => state.facts)
  const [reason, setReason] = useState('')
  const reasonId = useId()
  const { plan } = fit.planned
  const keys = [...of.numbers.map(({ place }) => place.key), ...of.gone.map(({ key }) => key)]
  const fields = fieldsBehind(keys, of.signed.plan, plan)
  return (
    <section className="unfit-acts" aria-label={words.acts(title)}>
      {fields.length > 0 && (
        <div className="unfit-act">
          <p>{words.takeBackLead}</p>
          <ul className="unfit-fields">
            {fields.map((field) => (
              <FieldBack
                key={field}
                field={field}
                now={planValue(plan, field)}
                then={planValue(of.signed.plan, field)}
                units={units}
              />
            ))}
          </ul>
          <button
            className="button"
            type="button"
            disabled={isLocked}
            onClick={() => commission.edit(takeChangeBack(fields, of.signed.plan))}
          >
            {words.takeBack}
          </button>
        </div>
      )}
      <div className="unfit-act">
        <p>{words.keepHint}</p>
        <button
          className="button"
          type="button"
          disabled={isLocked}
          onClick={() => commission.addFacts(keepAsBuilt(fits, fit, of, newGesture))}
        >
          {words.keep}
        </button>
      </div>
      <div className="unfit-act">
        <p>{words.redoHint}</p>
        <div className="field field-text">
          <label className="field-label" htmlFor={reasonId}>
            {words.reason}
          </label>
          <input
            className="field-input"
            id={reasonId}
            value={reason}
            maxLength={MOST_REASON}
            autoComplete="off"
            readOnly={isLocked}
            onChange={(event) => setReason(event.target.value)}
          />
        </div>
        <button
          className="button"
          type="button"
          disabled={isLocked}
          onClick={() => commission.addFacts(redoToPlan(of.stageId, reason.trim(), facts))}
        >
          {words.redo}
        </button>
      </div>
    </section>
  )
}

interface BackProps {
  readonly field: PlanField
  readonly now: unknown
  readonly then: unknown
  readonly units: ShopUnits
}

function FieldBack({ field, now, then, units }: BackProps) {
  return (
    <li>
      <strong>{fieldCalled(field)}</strong> {words.wasNow}{' '}
      <PlanValue field={field} value={now} units={units} beside={[then]} /> {words.to}{' '}
      <PlanValue field={field} value={then} units={units} beside={[now]} />
    </li>
  )
}
