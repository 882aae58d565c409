import type { Plan } from '../../../core/plan.ts'
import { nextPlank } from '../../../core/wood/nextPlank.ts'
import { WOOD_ROLES, type WoodRole } from '../../../core/wood/part.ts'
import { MOST_PLANKS, PLANK_RANGES } from '../../../record/boxFields.ts'
import { addPlank, changePlank, removePlank } from '../../../record/changes/planks.ts'
import { inOrder } from '../../../record/order.ts'
import { LengthField, type LengthValue } from '../../../ui/LengthField.tsx'
import { CUTTING_WORDS } from '../../../words/box/cutting.ts'
import { FIELD_WORDS } from '../../../words/fields.ts'
import { PLANK_WORDS } from '../../../words/fields/box.ts'
import { WOOD_ROLE_NAMES } from '../../../words/wood.ts'
import { SelectField } from '../../../ui/SelectField.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { useSheetField } from '../useSheetField.ts'

type Plank = Plan['cutting']['planks'][string]

const ROLES = WOOD_ROLES.map((value) => ({ value, label: WOOD_ROLE_NAMES[value] }))
const words = CUTTING_WORDS.planks

/** The planks in the rack that parts may be sawn from. */
export function PlankEditor() {
  const bench = useSheetBench()
  const planks = inOrder(bench.plan.cutting.planks)
  const isFull = planks.length >= MOST_PLANKS
  return (
    <section className="sheet-fields" data-field="plan.cutting.planks" aria-labelledby="planks-heading">
      <h2 id="planks-heading">{FIELD_WORDS['cutting.planks'].name}</h2>
      {planks.length === 0 && <p>{words.none}</p>}
      <ol className="pieces">
        {planks.map(([id, plank], i) => (
          <li className="piece" key={id}>
            <h3>{words.plank(i + 1)}</h3>
            <PlankValues id={id} plank={plank} place={i + 1} />
            <div className="commands">
              <button
                className="button"
                type="button"
                aria-label={`${words.remove}: ${words.plank(i + 1)}`}
                disabled={bench.readOnly}
                onClick={() => bench.edit(removePlank(id), bench.newId())}
              >
                {words.remove}
              </button>
            </div>
          </li>
        ))}
      </ol>
      <button
        className="button"
        type="button"
        disabled={bench.readOnly || isFull}
        onClick={() => bench.edit(addPlank(bench.newId(), nextPlank(planks.at(-1)?.[1])), bench.newId())}
      >
        {words.add}
      </button>
      {isFull && <p className="second small">{words.full}</p>}
    </section>
  )
}

function PlankValues({ id, plank, place }: { readonly id: string; readonly plank: Plank; readonly place: number }) {
  const { units } = useSheetBench()
  const label = (field: keyof typeof PLANK_WORDS) => `${PLANK_WORDS[field].name} ${place}`
  const role = useSheetField<WoodRole>(nameOf(id, 'role'), plank.role, (value) => changePlank(id, { role: value }))
  const length = usePlankLength(id, plank, 'lengthMm')
  const width = usePlankLength(id, plank, 'widthMm')
  const thickness = usePlankLength(id, plank, 'thicknessMm')
  return (
    <div className="piece-values" data-long={units.bodyLength === 'fractionalInch'}>
      <SelectField label={label('role')} binding={role} choices={ROLES} />
      <LengthField label={label('lengthMm')} binding={length} range={PLANK_RANGES.lengthMm} units={units} />
      <LengthField label={label('widthMm')} binding={width} range={PLANK_RANGES.widthMm} units={units} />
      <LengthField label={label('thicknessMm')} binding={thickness} range={PLANK_RANGES.thicknessMm} units={units} />
    </div>
  )
}

const nameOf = (id: string, field: keyof Plank): string => `plan.cutting.planks.${id}.${field}`

function usePlankLength(id: string, plank: Plank, field: keyof typeof PLANK_RANGES) {
  return useSheetField<LengthValue>(nameOf(id, field), plank[field], (value) =>
    changePlank(id, { [field]: typeof value === 'number' ? value : plank[field] }),
  )
}
