import type { CommissionDoc } from '../../record/commission.ts'
import type { HouseModel } from '../../state/modelStore.ts'
import { MODEL_WORDS } from '../../words/models.ts'
import { useModels, useWorkshop } from '../workshop.ts'

interface Props {
  readonly doc: CommissionDoc
  /** What is stored of its model, deleted or not; null where nothing is. */
  readonly stored: HouseModel | null
}

/** Which model an instrument goes by and what is left of it, in a sentence; where it is gone, the way to have it again. */
export function ModelStanding({ doc, stored }: Props) {
  const { models } = useWorkshop()
  const packed = useModels((state) => state.packed)
  const { modelAsTaken } = doc
  if (modelAsTaken === null) return <p className="second">{MODEL_WORDS.noModel}</p>
  const { modelId, name, plan } = modelAsTaken
  if (stored === null) {
    const own = packed?.find(({ id }) => id === modelId)
    const putAmong = (): void => {
      if (own !== undefined) void models.keepPacked(own)
      else if (modelId !== null) void models.create({ id: modelId, name, family: doc.family, plan })
    }
    return (
      <>
        <p className="second">{MODEL_WORDS.noRecord(name)}</p>
        {modelId !== null && (
          <button className="button model-mend" type="button" onClick={putAmong}>
            {own === undefined ? MODEL_WORDS.putAmong : MODEL_WORDS.bringBack}
          </button>
        )}
      </>
    )
  }
  if (stored.deletedAt !== null) {
    return (
      <>
        <p className="second">{MODEL_WORDS.removed(stored.name)}</p>
        <button className="button model-mend" type="button" onClick={() => void models.restore(stored.id)}>
          {MODEL_WORDS.bringBack}
        </button>
      </>
    )
  }
  return (
    <p className="second">
      {MODEL_WORDS.goesBy(stored.name)} {stored.name !== name && MODEL_WORDS.takenAs(name)}
    </p>
  )
}
