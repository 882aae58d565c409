import { type FormEvent, useEffect, useId, useState } from 'react'
import { useLocation } from 'wouter'
import { fetchModels } from '../../files/packedFiles.ts'
import { nextFreeNumber } from '../../record/changes/begin.ts'
import { FAMILIES, type Head } from '../../record/commission.ts'
import { type HouseModel, readHouseModel } from '../../record/houseModel.ts'
import { startingStages } from '../../record/patterns/stages.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import '../../ui/field.css'
import { NEW_WORDS } from '../../words/bench.ts'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { problemSentence } from '../../words/problems.ts'
import { useList, useWorkshop } from '../workshop.ts'

/** Asks the few things a new instrument needs: what it is called, for whom, and what it starts from. */
export function NewInstrument({ onClose }: { readonly onClose: () => void }) {
  const { list } = useWorkshop()
  const [, go] = useLocation()
  const heads = useList((state) => state.heads)
  const models = useModels()
  const [number, setNumber] = useState(() => suggestNumber(heads))
  const [title, setTitle] = useState('')
  const [client, setClient] = useState('')
  const [from, setFrom] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<string | null>(null)
  const here = heads.filter((head) => head.deletedAt === null)
  const start = from ?? (models?.[0] === undefined ? '' : `model ${models[0].name}`)

  const begin = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    const called = number.trim()
    if (called === '') return setTrouble(NEW_WORDS.numberMissing)
    if (here.some((head) => head.number === called)) return setTrouble(NEW_WORDS.numberTaken(called))
    const model = models?.find((one) => start === `model ${one.name}`)
    const made =
      model === undefined
        ? await list.duplicate(start, { number: called, ...(title === '' ? {} : { title }) })
        : await list.create({
            number: called,
            title: title === '' ? model.name : title,
            family: model.family,
            model: { name: model.name, plan: model.plan },
            plan: model.plan,
            stages: startingStages(model.family),
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
          <div className="new-starts">
            {models?.map((model) => (
              <label className="choice" key={model.name}>
                <input
                  type="radio"
                  name="start"
                  checked={start === `model ${model.name}`}
                  onChange={() => setFrom(`model ${model.name}`)}
                />
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

/** The models of the house; null until they are here. One that cannot be read is left out. */
function useModels(): readonly HouseModel[] | null {
  const [models, setModels] = useState<readonly HouseModel[] | null>(null)
  useEffect(() => {
    let isHere = true
    const fetchAll = async (): Promise<void> => {
      const read = (await fetchModels()).flatMap((one) => {
        const model = readHouseModel(one)
        return model.ok ? [model.value] : []
      })
      const place = (model: HouseModel): number => FAMILIES.indexOf(model.family)
      if (isHere) setModels(read.toSorted((a, b) => place(a) - place(b)))
    }
    void fetchAll()
    return () => {
      isHere = false
    }
  }, [])
  return models
}

/** The next number of the series in use: one after the latest; 1 where there is none. */
function suggestNumber(heads: readonly Head[]): string {
  const numbers = heads.map((head) => head.number)
  const latest = numbers.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })).at(-1)
  return latest === undefined ? '1' : nextFreeNumber(latest, numbers)
}
