import { useEffect, useMemo, useState } from 'react'
import { takeFromModel } from '../../record/changes/model.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import { modelDifferences } from '../../record/modelDifferences.ts'
import type { HouseModel } from '../../state/modelStore.ts'
import { MODEL_WORDS } from '../../words/models.ts'
import { ModelNotice } from '../models/ModelNotice.tsx'
import { isInUse } from '../sheets/fieldsInUse.ts'
import { useCommission, useModels, useShop, useWorkshop } from '../workshop.ts'
import { DifferenceRow } from './DifferenceRow.tsx'
import { ModelActs } from './ModelActs.tsx'
import { ModelStanding } from './ModelStanding.tsx'
import './model.css'

/** The model an instrument goes by, field by field: as it was taken, as it is today, and what this instrument has. */
export function ModelView({ id }: { readonly id: string }) {
  const { models: store } = useWorkshop()
  const doc = useCommission((state) => state.record?.doc ?? null)
  const models = useModels((state) => state.models)
  useEffect(() => {
    void store.fetchPacked()
    return () => store.dismiss()
  }, [store])
  if (doc === null) return null
  const modelId = doc.modelAsTaken?.modelId ?? null
  const stored = models.find((model) => model.id === modelId) ?? null
  return (
    <>
      <header className="view-head">
        <h1>{MODEL_WORDS.title}</h1>
        <ModelStanding doc={doc} stored={stored} />
      </header>
      <div className="model-notice">
        <ModelNotice />
      </div>
      <Differences id={id} doc={doc} today={stored?.deletedAt === null ? stored : null} />
      <ModelActs id={id} doc={doc} today={stored?.deletedAt === null ? stored : null} />
    </>
  )
}

interface Props {
  readonly id: string
  readonly doc: CommissionDoc
  /** The model as it stands among the models; null where it does not. */
  readonly today: HouseModel | null
}

function Differences({ id, doc, today }: Props) {
  const { commission } = useWorkshop()
  const isLocked = useCommission((state) => state.readOnly !== null)
  const units = useShop((state) => state.shop.units)
  const [showsIdle, setShowsIdle] = useState(false)
  const asTaken = doc.modelAsTaken?.plan ?? null
  const todayPlan = today?.plan ?? null
  const differences = useMemo(() => modelDifferences(doc.plan, asTaken, todayPlan), [doc.plan, asTaken, todayPlan])
  if (asTaken === null) return null
  if (differences.length === 0) return <p>{today === null ? MODEL_WORDS.sameAsTaken : MODEL_WORDS.same}</p>
  const plans = [doc.plan, asTaken, todayPlan].filter((plan) => plan !== null)
  const counting = differences.filter(({ field }) => plans.some((plan) => isInUse(plan, field)))
  const idle = differences.filter(({ field }) => !plans.some((plan) => isInUse(plan, field)))
  const shown = showsIdle ? [...counting, ...idle] : counting
  return (
    <>
      {shown.length === 0 && <p>{MODEL_WORDS.sameInUse}</p>}
      {shown.length > 0 && (
        <table className="table differences" aria-label={MODEL_WORDS.caption}>
          <thead>
            <tr>
              <th scope="col">{MODEL_WORDS.field}</th>
              <th scope="col">{MODEL_WORDS.asTaken}</th>
              {today !== null && <th scope="col">{MODEL_WORDS.today}</th>}
              <th scope="col">{MODEL_WORDS.here}</th>
              <th scope="col">
                <span className="out-of-sight">{MODEL_WORDS.acts}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map((difference) => (
              <DifferenceRow
                key={difference.field}
                id={id}
                difference={difference}
                units={units}
                isLocked={isLocked}
                onTake={(field, from) => {
                  const plan = from === 'today' ? todayPlan : asTaken
                  if (plan !== null) commission.edit(takeFromModel(field, plan))
                }}
              />
            ))}
          </tbody>
        </table>
      )}
      {idle.length > 0 && (
        <button
          className="button button-plain differences-idle"
          type="button"
          aria-expanded={showsIdle}
          onClick={() => setShowsIdle(!showsIdle)}
        >
          {showsIdle ? MODEL_WORDS.hideIdle : MODEL_WORDS.idle(idle.length)}
        </button>
      )}
    </>
  )
}
