import { useEffect, useState } from 'react'
import type { HouseModel } from '../../state/modelStore.ts'
import { startingModels } from '../../state/modelStore.ts'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { MODELS_WORDS } from '../../words/models.ts'
import { problemSentence } from '../../words/problems.ts'
import { NewInstrument } from '../list/NewInstrument.tsx'
import { useModels, useWorkshop } from '../workshop.ts'
import { ModelNotice } from './ModelNotice.tsx'
import { ModelRow } from './ModelRow.tsx'
import './models.css'

/** The models of the house: what instruments are begun from. */
export function ModelsView() {
  const { models: store } = useWorkshop()
  const models = useModels((state) => state.models)
  const packed = useModels((state) => state.packed)
  const unreadable = useModels((state) => state.unreadable)
  const [begunFrom, setBegunFrom] = useState<string | null>(null)
  const uses = useUses()
  useEffect(() => {
    void store.fetchPacked()
    return () => store.dismiss()
  }, [store])
  const here = startingModels({ models, packed })
  const removed = models.filter((model) => model.deletedAt !== null)
  const { columns } = MODELS_WORDS
  return (
    <>
      <header className="view-head">
        <h1>{MODELS_WORDS.title}</h1>
        <p className="second">{MODELS_WORDS.lead}</p>
      </header>
      {here.length > 0 && (
        <table className="table models">
          <thead>
            <tr>
              <th scope="col">{columns.name}</th>
              <th scope="col">{columns.family}</th>
              <th scope="col">{columns.length}</th>
              <th scope="col">{columns.lowerBout}</th>
              <th scope="col">{columns.uses}</th>
              <th scope="col">
                <span className="out-of-sight">{columns.acts}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {here.map((model) => (
              <ModelRow
                key={model.id}
                model={model}
                names={here.filter(({ id }) => id !== model.id).map(({ name }) => name)}
                uses={uses?.get(model.id) ?? (uses === null ? null : 0)}
                onBegin={() => setBegunFrom(model.id)}
              />
            ))}
          </tbody>
        </table>
      )}
      {packed !== null && here.length === 0 && <p>{MODELS_WORDS.none}</p>}
      {unreadable.map(({ id, problem }) => (
        <p key={id} className="models-foot">
          {MODELS_WORDS.unreadable} {problemSentence(problem)}
        </p>
      ))}
      {removed.length > 0 && <Removed models={removed} startsShown={here.length === 0} />}
      {begunFrom !== null && <NewInstrument model={begunFrom} onClose={() => setBegunFrom(null)} />}
      <ModelNotice />
    </>
  )
}

function Removed({ models, startsShown }: { readonly models: readonly HouseModel[]; readonly startsShown: boolean }) {
  const { models: store } = useWorkshop()
  const [isShown, setShown] = useState(startsShown)
  return (
    <section className="models-foot">
      <button className="button button-plain" type="button" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
        {isShown ? MODELS_WORDS.hideRemoved : MODELS_WORDS.showRemoved(models.length)}
      </button>
      {isShown && (
        <ul className="models-removed" aria-label={MODELS_WORDS.removed}>
          {models.map(({ id, name, family }) => (
            <li key={id}>
              <span>{name}</span>
              <span className="second">{FAMILY_WORDS[family]}</span>
              <button
                className="button"
                type="button"
                aria-label={MODELS_WORDS.bringBackOf(name)}
                onClick={() => void store.restore(id)}
              >
                {MODELS_WORDS.bringBack}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

/** How many instruments go by each model; null until they have been counted. Counted anew when the list has moved. */
function useUses(): ReadonlyMap<string, number> | null {
  const { models, list } = useWorkshop()
  const [uses, setUses] = useState<ReadonlyMap<string, number> | null>(null)
  useEffect(() => {
    let isHere = true
    const count = async (): Promise<void> => {
      const counted = await models.countUses().catch(() => null)
      if (isHere) setUses(counted)
    }
    void count()
    const stop = list.store.subscribe((now, before) => {
      if (now.heads !== before.heads) void count()
    })
    return () => {
      isHere = false
      stop()
    }
  }, [models, list])
  return uses
}
