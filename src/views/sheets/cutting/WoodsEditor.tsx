import { WOOD_ROLES, type WoodRole } from '../../../core/wood/part.ts'
import { LONGEST_WOOD } from '../../../record/boxFields.ts'
import { TextField } from '../../../ui/TextField.tsx'
import { CUTTING_WORDS } from '../../../words/box/cutting.ts'
import { FIELD_WORDS } from '../../../words/fields.ts'
import { WOOD_ROLE_NAMES } from '../../../words/wood.ts'
import { useSheetBench } from '../sheetBench.ts'
import { useDocumentField } from '../useSheetField.ts'

/** What each part is made of, in the maker's words. */
export function WoodsEditor() {
  return (
    <section className="sheet-fields" data-field="plan.cutting.woods" aria-labelledby="woods-heading">
      <h2 id="woods-heading">{FIELD_WORDS['cutting.woods'].name}</h2>
      <p className="second small">
        {FIELD_WORDS['cutting.woods'].hint} {CUTTING_WORDS.chooseWoods}
      </p>
      {WOOD_ROLES.map((role) => (
        <Wood key={role} role={role} />
      ))}
    </section>
  )
}

function Wood({ role }: { readonly role: WoodRole }) {
  const { plan } = useSheetBench()
  const binding = useDocumentField(`plan.cutting.woods.${role}`, plan.cutting.woods[role])
  return <TextField label={WOOD_ROLE_NAMES[role]} binding={binding} most={LONGEST_WOOD} />
}
