import { type FormEvent, useEffect, useId, useState } from 'react'
import { useLocation } from 'wouter'
import { nextFreeNumber } from '../../record/changes/begin.ts'
import type { Head } from '../../record/commission.ts'
import { startingStages } from '../../record/patterns/stages.ts'
import { type StartingModel, startingModels } from '../../state/modelStore.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import '../../ui/field.css'
import { NEW_WORDS } from '../../words/bench.ts'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { problemSentence } from '../../words/problems.ts'
import { useList, useModels, useShop, useWorkshop } from '../workshop.ts'

interface Props {
  readonly onClose: () => void
  /** The id of the model that is chosen at first; the first of all where none is named. */
  readonly model?: string
}

/** Asks the few things a new instrument needs: what it is called, for whom, and what it starts from. */
export function NewInstrument({ onClose, model: given }: Props) {
  const { list, models: store } = useWorkshop()
  const [, go] = useLocation()
  const heads = useList((state) => state.heads)
  const models = useStartingModels()
  const [number, setNumber] = useState(() => suggestNumber(heads))
  const [title, setTitle] = useState('')
  const [client, setClient] = useState('')
  const [from, setFrom] = useState<string | null>(given ?? null)
  const [order, setOrder] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null)
  const here = heads.filter((head) => head.deletedAt === null)
  const patterns = useShop((state) => state.shop.patterns)
  const start = from ?? models?.[0]?.id ?? (models === null ? '' : (here[0]?.id ?? ''))

  const begin = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    const called = number.trim()
    if (called === '') return setTrouble(NEW_WORDS.numberMissing)
    if (here.some((head) => head.number === called)) return setTrouble(NEW_WORDS.numberTaken(called))
    const model = models?.find((one) => one.id === start)
    const kept = model === undefined || model.isStored ? null : await store.keepPacked(model)
    if (kept?.ok === false) return setTrouble(problemSentence(kept.problem))
    const made =
      model === undefined
        ? await list.duplicate(start, { number: called, ...(title === '' ? {} : { title }) })
        : await list.create({
            number: called,
            title: title === '' ? model.name : title,
            family: model.family,
            model: { modelId: model.id, name: model.name, plan: model.plan },
            plan: model.plan,
            stages: patterns[order]?.stages ?? startingStages(model.family),
            brief: { client },
          })
    if (!made.ok) return setTrouble(problemSentence(made.problem))
    onClose()
    go(`/i/${made.value}`)
  }

  return (
    <Dialog title={NEW_WORDS.title} onClose={onClose}>
      <form className="dialog-body" onSubmit={(event) => void begin(event)}>
        <div className="new-names">
          <Line label={NEW_WORDS.number} value={number} most={40} onType={setNumber} />
          <Line label={NEW_WORDS.what} value={title} most={200} onType={setTitle} />
          <Line label={NEW_WORDS.client} value={client} most={200} onType={setClient} />
        </div>
        <fieldset>
          <legend className="field-label">{`${NEW_WORDS.startFrom} ${NEW_WORDS.models}`}</legend>
          {models === null && <p className="second">{NEW_WORDS.loading}</p>}
          {models?.length === 0 && <p className="second">{NEW_WORDS.noModels}</p>}
          <div className="new-starts">
            {models?.map((model) => (
              <label className="choice" key={model.id}>
                <input type="radio" name="start" checked={start === model.id} onChange={() => setFrom(model.id)} />
                <span>
                  {model.name}, {FAMILY_WORDS[model.family].toLowerCase()}
                </span>
              </label>
            ))}
          </div>
        </fieldset>
        {here.length > 0 && (
          <fieldset>
            <legend className="field-label">{`${NEW_WORDS.startFrom} ${NEW_WORDS.instruments}`}</legend>
            <div className="new-starts">
              {here.map((head) => (
                <label className="choice" key={head.id}>
                  <input type="radio" name="start" checked={start === head.id} onChange={() => setFrom(head.id)} />
                  <span>
                    {head.number} {head.title}
                  </span>
                </label>
              ))}
            </div>
          </fieldset>
        )}
        {Object.keys(patterns).length > 0 && models?.some((model) => model.id === start) && (
          <label className="field field-text">
            <span className="field-label">{NEW_WORDS.order}</span>
            <select className="field-input" value={order} onChange={({ target }) => setOrder(target.value)}>
              <option value="">{NEW_WORDS.houseOrder}</option>
              {Object.entries(patterns).map(([id, { name, family }]) => (
                <option key={id} value={id}>
                  {name}, {FAMILY_WORDS[family].toLowerCase()}
                </option>
              ))}
            </select>
          </label>
        )}
        {trouble !== null && (
          <p className="field-problem" role="alert">
            {trouble}
          </p>
        )}
        <div className="commands">
          <button className="button button-next" type="submit" disabled={start === ''}>
            {NEW_WORDS.begin}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

interface LineProps {
  readonly label: string
  readonly value: string
  readonly most: number
  readonly onType: (text: string) => void
}

function Line({ label, value, most, onType }: LineProps) {
  const id = useId()
  return (
    <div className="field field-text">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        className="field-input"
        id={id}
        value={value}
        maxLength={most}
        autoComplete="off"
        onChange={(event) => onType(event.target.value)}
      />
    </div>
  )
}

/** The models an instrument can be begun from; null until those that come with the program are here. */
function useStartingModels(): readonly StartingModel[] | null {
  const { models: store } = useWorkshop()
  const models = useModels((state) => state.models)
  const packed = useModels((state) => state.packed)
  useEffect(() => void store.fetchPacked(), [store])
  return packed === null ? null : startingModels({ models, packed })
}

/** The next number of the series in use: one after the latest; 1 where there is none. */
function suggestNumber(heads: readonly Head[]): string {
  const numbers = heads.map((head) => head.number)
  const latest = numbers.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })).at(-1)
  return latest === undefined ? '1' : nextFreeNumber(latest, numbers)
}
