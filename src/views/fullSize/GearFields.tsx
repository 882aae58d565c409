import type { Jigs } from '../../core/jigs.ts'
import { JIG_RANGES } from '../../record/fullSizeFields.ts'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { FULL_SIZE_VIEW_WORDS } from '../../words/press.ts'
import { useShopBinding } from '../useBinding.ts'
import { useShop } from '../workshop.ts'

const FIELDS = ['mouldClearanceMm', 'slatMm', 'blanketMm', 'caulClearanceMm'] as const satisfies readonly (keyof Jigs)[]

/** What stands between the side and the forms it is bent and held on: of the shop. */
export function GearFields() {
  return (
    <section className="full-size-gear" aria-labelledby="gear-heading">
      <h3 id="gear-heading">{FULL_SIZE_VIEW_WORDS.gear}</h3>
      <p className="second small">{FULL_SIZE_VIEW_WORDS.gearLead}</p>
      {FIELDS.map((field) => (
        <GearField key={field} field={field} />
      ))}
    </section>
  )
}

function GearField({ field }: { readonly field: keyof Jigs }) {
  const binding = useShopBinding<LengthValue>(`jigs.${field}`)
  const units = useShop((state) => state.shop.units)
  return (
    <LengthField label={FULL_SIZE_VIEW_WORDS.jigs[field]} binding={binding} range={JIG_RANGES[field]} units={units} />
  )
}
