import type { PlateSide } from '../../../core/boxPlan.ts'
import { nextPlateBrace } from '../../../core/instrument/brace/nextPlateBrace.ts'
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
  const at = braces.findIndex(({ id }) => id === chosen?.id)
  const add = (brace: Parameters<typeof addBrace>[1]): void => {
    const id = bench.newId()
    bench.edit(addBrace(id, brace), bench.newId())
    onChoose(id)
  }
  const command = (text: string, act: () => void, isOff = false) => (
    <button className="button" type="button" disabled={readOnly || isOff} onClick={act}>
      {text}
    </button>
  )
  return (
    <section className="sheet-fields" data-field="plan.bracing.braces" aria-labelledby="braces-heading">
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
      {chosen !== null && (
        <div className="piece">
          <h3>{chosen.name}</h3>
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
            {command(BRACING_WORDS.remove, () => {
              bench.edit(removeBrace(chosen.id), bench.newId())
              onChoose(null)
            })}
          </div>
        </div>
      )}
      <button
        className="button"
        type="button"
        disabled={readOnly || isFull}
        onClick={() => add(nextPlateBrace(plate, computed.geometry.lengthMm))}
      >
        {BRACING_WORDS.add}
      </button>
      {isFull && <p className="second small">{BRACING_WORDS.full}</p>}
    </section>
  )
}
