import { type FormEvent, useId, useState } from 'react'
import { goByModel, takeAllFromModel } from '../../record/changes/model.ts'
import type { Plan } from '../../core/plan.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import { modelDifferences, OWN_FIELDS } from '../../record/modelDifferences.ts'
import { type HouseModel, type StartingModel, startingModels } from '../../state/modelStore.ts'
import { MODEL_WORDS } from '../../words/models.ts'
import { nameProblem } from '../models/ModelRow.tsx'
import { useCommission, useDraft, useModels, useWorkshop } from '../workshop.ts'
import '../../ui/field.css'

interface Props {
  readonly id: string
  readonly doc: CommissionDoc
  /** The model as it stands among the models; null where it does not. */
  readonly today: HouseModel | null
}

/** What can be done with instrument and model as wholes. */
export function ModelActs({ id, doc, today }: Props) {
  const built = useCommission((state) => state.builtDoc?.plan ?? doc.plan)
  const [which, setWhich] = useState<WhichPlan>('planned')
  const isBuiltOtherwise = built !== doc.plan
  const given = which === 'built' ? built : doc.plan
  return (
    <>
      {isBuiltOtherwise && <PlanChoice value={which} onChoose={setWhich} />}
      <div className="model-acts">
        {today !== null && <WithModel doc={doc} today={today} given={given} />}
        <SaveAsModel id={id} doc={doc} given={given} />
        <GoByAnother today={today} />
      </div>
    </>
  )
}

type WhichPlan = keyof typeof MODEL_WORDS.which

/** What a model is given of an instrument that came out otherwise than planned. */
function PlanChoice({ value, onChoose }: { readonly value: WhichPlan; readonly onChoose: (which: WhichPlan) => void }) {
  const name = useId()
  return (
    <fieldset className="field field-choice model-which">
      <legend className="field-label">{MODEL_WORDS.whichPlan}</legend>
      <div className="field-choices">
        {(Object.keys(MODEL_WORDS.which) as WhichPlan[]).map((which) => (
          <label className="choice" key={which}>
            <input type="radio" name={name} checked={which === value} onChange={() => onChoose(which)} />
            <span>{MODEL_WORDS.which[which]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

interface WithModelProps {
  readonly doc: CommissionDoc
  readonly today: HouseModel
  /** The plan a model is given: as planned, or as built. */
  readonly given: Plan
}

function WithModel({ doc, today, given }: WithModelProps) {
  const { commission, models } = useWorkshop()
  const isLocked = useCommission((state) => state.readOnly !== null)
  const differences = modelDifferences(doc.plan, doc.modelAsTaken?.plan ?? null, today.plan)
  const isLevel = modelDifferences(doc.plan, null, today.plan).every(({ field }) => OWN_FIELDS.has(field))
  const isGiven = modelDifferences(given, null, today.plan).every(({ field }) => OWN_FIELDS.has(field))
  return (
    <section className="model-act">
      <h2>{MODEL_WORDS.all}</h2>
      <div className="commands">
        <button
          className="button"
          type="button"
          disabled={isLocked || (isLevel && differences.every(({ field }) => OWN_FIELDS.has(field)))}
          onClick={() => commission.edit(takeAllFromModel({ ...today, modelId: today.id }))}
        >
          {MODEL_WORDS.takeAll}
        </button>
      </div>
      <p className="second small">{MODEL_WORDS.takeAllHint}</p>
      <div className="commands">
        <button className="button" type="button" disabled={isGiven} onClick={() => void models.give(today.id, given)}>
          {MODEL_WORDS.give}
        </button>
      </div>
      <p className="second small">{MODEL_WORDS.giveHint}</p>
    </section>
  )
}

interface SaveProps {
  readonly id: string
  readonly doc: CommissionDoc
  readonly given: Plan
}

function SaveAsModel({ id, doc, given }: SaveProps) {
  const { commission, models, drafts, newGesture } = useWorkshop()
  const isLocked = useCommission((state) => state.readOnly !== null)
  const names = useModels((state) => state.models).flatMap((one) => (one.deletedAt === null ? [one.name] : []))
  const name = useDraft(id, DRAFT) ?? ''
  const [isRefused, setRefused] = useState(false)
  const inputId = useId()
  const problemId = useId()
  const problem = isRefused ? nameProblem(name, names) : null
  const save = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    if (nameProblem(name, names) !== null) return setRefused(true)
    const gesture = newGesture()
    const { family } = doc
    const plan = given
    const made = await models.create({ name: name.trim(), family, plan }, () => commission.takeBack(gesture))
    if (!made.ok) return
    commission.edit(goByModel({ modelId: made.value, name: name.trim(), plan }), gesture)
    setRefused(false)
    drafts.clear(id, DRAFT)
  }
  return (
    <form className="model-act" onSubmit={(event) => void save(event)}>
      <h2>{MODEL_WORDS.saveAs}</h2>
      <div className="field field-text">
        <label className="field-label" htmlFor={inputId}>
          {MODEL_WORDS.name}
        </label>
        <input
          className="field-input"
          id={inputId}
          value={name}
          maxLength={200}
          autoComplete="off"
          readOnly={isLocked}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : problemId}
          onChange={(event) => {
            setRefused(false)
            drafts.keep(id, DRAFT, event.target.value)
          }}
        />
        {problem !== null && (
          <p className="field-hint" id={problemId}>
            <span className="field-problem">{problem}</span>
          </p>
        )}
      </div>
      <div className="commands">
        <button className="button" type="submit" disabled={isLocked}>
          {MODEL_WORDS.save}
        </button>
      </div>
      <p className="second small">{MODEL_WORDS.saveAsHint}</p>
    </form>
  )
}

/** Where the name of a model that is not saved yet is kept. */
const DRAFT = 'newModel'

function GoByAnother({ today }: { readonly today: HouseModel | null }) {
  const { commission, models: store } = useWorkshop()
  const isLocked = useCommission((state) => state.readOnly !== null)
  const models = useModels((state) => state.models)
  const packed = useModels((state) => state.packed)
  const others = startingModels({ models, packed }).filter((model) => model.id !== today?.id)
  const goBy = async (model: StartingModel): Promise<void> => {
    const isThere = model.isStored || (await store.keepPacked(model)).ok
    if (isThere) commission.edit(goByModel({ ...model, modelId: model.id }))
  }
  if (others.length === 0) return null
  return (
    <section className="model-act">
      <h2>{today === null ? MODEL_WORDS.goByFirst : MODEL_WORDS.goBy}</h2>
      <div className="commands">
        {others.map((model) => (
          <button className="button" type="button" key={model.id} disabled={isLocked} onClick={() => void goBy(model)}>
            {model.name}
          </button>
        ))}
      </div>
      <p className="second small">{MODEL_WORDS.goByHint}</p>
    </section>
  )
}
