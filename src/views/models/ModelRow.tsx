import { useId, useState } from 'react'
import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import type { StartingModel } from '../../state/modelStore.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { MODELS_WORDS, usedBy } from '../../words/models.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { useDraft, useModels, useShop, useWorkshop } from '../workshop.ts'
import '../../ui/field.css'

interface Props {
  readonly model: StartingModel
  /** What the other models are called. */
  readonly names: readonly string[]
  /** How many instruments go by it; null until they have been counted. */
  readonly uses: number | null
  readonly onBegin: () => void
}

/** One model in the ledger of the house. */
export function ModelRow({ model, names, uses, onBegin }: Props) {
  const { models, computedOf } = useWorkshop()
  const isAsPacked = useModels((state) => state.models.find(({ id }) => id === model.id)?.demo ?? true)
  const { columns } = MODELS_WORDS
  const { body } = computedOf(model.plan).numbers
  const remove = async (): Promise<void> => {
    if (model.isStored || (await models.keepPacked(model)).ok) await models.remove(model.id)
  }
  return (
    <tr>
      <th scope="row">
        <ModelName model={model} names={names} />
        {isAsPacked && <span className="second small">{MODELS_WORDS.packed}</span>}
      </th>
      <td data-label={columns.family}>{FAMILY_WORDS[model.family]}</td>
      <td data-label={columns.length}>
        <Length number="body.lengthMm" value={body.lengthMm} />
      </td>
      <td data-label={columns.lowerBout}>
        <Length number="body.lowerBoutMm" value={body.lowerBoutMm} />
      </td>
      <td data-label={columns.uses}>{uses === null ? '' : usedBy(uses)}</td>
      <td>
        <span className="commands models-commands">
          <button className="button" type="button" aria-label={MODELS_WORDS.beginFrom(model.name)} onClick={onBegin}>
            {MODELS_WORDS.begin}
          </button>
          <button
            className="button button-plain"
            type="button"
            aria-label={MODELS_WORDS.removeOf(model.name)}
            onClick={() => void remove()}
          >
            {MODELS_WORDS.remove}
          </button>
        </span>
      </td>
    </tr>
  )
}

function Length({ number, value }: { readonly number: NumberKey; readonly value: number | 'flat' | 'none' }) {
  const units = useShop((state) => state.shop.units)
  return <FigureText figure={formatQuantity(value, aboutNumber(number).quantity, units)} words={FIGURE_WORDS} />
}

/** A model's name, renamed where it stands: taken on Enter or when the field is left; Escape puts the old one back. */
function ModelName({ model, names }: Pick<Props, 'model' | 'names'>) {
  const { models, drafts } = useWorkshop()
  const draft = useDraft(model.id, 'name')
  const [isRefused, setRefused] = useState(draft !== null)
  const problemId = useId()
  const text = draft ?? model.name
  const problem = isRefused && draft !== null ? nameProblem(text, names) : null
  const take = async (): Promise<void> => {
    const name = text.trim()
    if (draft === null) return
    if (nameProblem(name, names) !== null) return setRefused(true)
    const isThere = name === model.name || model.isStored || (await models.keepPacked(model)).ok
    if (isThere && (name === model.name || (await models.rename(model.id, name)).ok)) drafts.clear(model.id, 'name')
  }
  return (
    <span className="field field-text models-name">
      <input
        className="field-input"
        aria-label={MODELS_WORDS.nameOf(model.name)}
        value={text}
        maxLength={200}
        autoComplete="off"
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : problemId}
        onChange={(event) => {
          setRefused(false)
          drafts.keep(model.id, 'name', event.target.value)
        }}
        onBlur={() => void take()}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur()
          if (event.key === 'Escape') drafts.clear(model.id, 'name')
        }}
      />
      {problem !== null && (
        <span className="field-hint" id={problemId}>
          <span className="field-problem">{problem}</span>
        </span>
      )}
    </span>
  )
}

/** Why a model cannot be called that; null where it can. */
export function nameProblem(typed: string, names: readonly string[]): string | null {
  const name = typed.trim()
  if (name === '') return MODELS_WORDS.nameMissing
  const plain = name.toLocaleLowerCase('en')
  return names.some((one) => one.trim().toLocaleLowerCase('en') === plain) ? MODELS_WORDS.nameTaken(name) : null
}
