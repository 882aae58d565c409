import { useState } from 'react'
import type { PlateSide } from '../../../core/boxPlan.ts'
import { endsStoppingAt, type LooseEnd } from '../../../core/instrument/brace/looseEnds.ts'
import { nextPlateBrace } from '../../../core/instrument/brace/nextPlateBrace.ts'
import { plateSiteOf } from '../../../core/plateSite.ts'
import { MOST_BRACES } from '../../../record/boxFields.ts'
import { addBrace, moveBrace, removeBrace } from '../../../record/changes/braces.ts'
import { BRACING_WORDS } from '../../../words/box/bracing.ts'
import { useSheetBench } from '../sheetBench.ts'
import { BraceFields } from './BraceFields.tsx'
import type { NamedBrace } from './braceNames.ts'

interface Props {
  readonly plate: PlateSide
  readonly braces: readonly NamedBrace[]
  readonly chosen: NamedBrace | null
  readonly onChoose: (id: string | null) => void
}

/** The braces of one plate by name, the chosen one with its fields. */
export function BraceEditor({ plate, braces, chosen, onChoose }: Props) {
  const bench = useSheetBench()
  const { plan, computed, readOnly } = bench
  const isFull = Object.keys(plan.bracing.braces).length >= MOST_BRACES
  const [removed, tell] = useState<Removed | null>(null)
  const at = braces.findIndex(({ id }) => id === chosen?.id)
  const add = (brace: Parameters<typeof addBrace>[1]): void => {
    const id = bench.newId()
    bench.edit(addBrace(id, brace), bench.newId())
    onChoose(id)
  }
  const remove = ({ id, name }: NamedBrace): void => {
    const loose = endsStoppingAt(id, plan.bracing.braces, computed.geometry.bracing.placed)
    bench.edit(removeBrace(id, loose), bench.newId())
    tell({ id, name, loose })
    onChoose(null)
  }
  const command = (text: string, act: () => void, isOff = false) => (
    <button className="button" type="button" disabled={readOnly || isOff} onClick={act}>
      {text}
    </button>
  )
  return (
    <section className="sheet-fields brace-editor" data-field="plan.bracing.braces" aria-labelledby="braces-heading">
      <h2 id="braces-heading">{BRACING_WORDS.list}</h2>
      {braces.length > 0 && (
        <div className="brace-list">
          {braces.map((one) => (
            <button
              className="button"
              type="button"
              key={one.id}
              aria-pressed={one.id === chosen?.id}
              onClick={() => onChoose(one.id === chosen?.id ? null : one.id)}
            >
              {one.name}
            </button>
          ))}
        </div>
      )}
      <output className="brace-removed">
        {removed !== null && chosen === null && <RemovedSentence removed={removed} braces={braces} />}
      </output>
      {chosen !== null && (
        <div className="piece">
          <h3>{chosen.name}</h3>
          {chosen.entered !== null && <p className="second small">{BRACING_WORDS.asEntered[chosen.entered]}</p>}
          <BraceFields key={chosen.id} chosen={chosen} others={braces.filter(({ id }) => id !== chosen.id)} />
          <div className="commands">
            {command(
              BRACING_WORDS.earlier,
              () => bench.edit(moveBrace(chosen.id, braces[at - 1]?.id ?? null), bench.newId()),
              at <= 0,
            )}
            {command(
              BRACING_WORDS.later,
              () => bench.edit(moveBrace(chosen.id, braces[at + 2]?.id ?? null), bench.newId()),
              at === braces.length - 1,
            )}
            {command(BRACING_WORDS.copy, () => add(chosen.brace), isFull)}
            {command(BRACING_WORDS.remove, () => remove(chosen))}
          </div>
        </div>
      )}
      <button
        className="button"
        type="button"
        disabled={readOnly || isFull}
        onClick={() => add(nextPlateBrace(plate, plateSiteOf(plate, plan, computed)))}
      >
        {BRACING_WORDS.add}
      </button>
      {isFull && <p className="second small">{BRACING_WORDS.full}</p>}
    </section>
  )
}

/** A brace that was taken away, as it was called, and the ends that stopped at it. */
interface Removed {
  readonly id: string
  readonly name: string
  readonly loose: readonly LooseEnd[]
}

/** Said until the next brace is taken in hand, and while it is so: ends as they are called by now. */
function RemovedSentence({ removed, braces }: { readonly removed: Removed; readonly braces: readonly NamedBrace[] }) {
  if (braces.some(({ id }) => id === removed.id)) return null
  const loose = removed.loose.flatMap(({ id, end }) => {
    const brace = braces.find((one) => one.id === id)
    return brace?.brace[end].stops === 'here' ? [BRACING_WORDS.looseEnd(BRACING_WORDS[end], brace.name)] : []
  })
  return <p>{BRACING_WORDS.removed(removed.name, loose)}</p>
}
