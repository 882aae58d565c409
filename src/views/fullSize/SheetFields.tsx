import { PRINTING_RANGES } from '../../record/fullSizeFields.ts'
import { FULL_SIZE_SHEETS } from '../../record/fullSizeSheets.ts'
import { ChoiceField } from '../../ui/ChoiceField.tsx'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { FULL_SIZE_VIEW_WORDS } from '../../words/press.ts'
import { useShopBinding } from '../useBinding.ts'
import { useShop } from '../workshop.ts'

/** On what templates are printed: the shop's choice, for every instrument. */
export function SheetFields() {
  const sheet = useShopBinding<(typeof FULL_SIZE_SHEETS)[number]>('printing.sheet')
  const isRoll = useShop((state) => state.shop.printing.sheet === 'roll')
  return (
    <>
      <ChoiceField
        label={FULL_SIZE_VIEW_WORDS.sheet}
        binding={sheet}
        choices={FULL_SIZE_SHEETS.map((value) => ({ value, label: FULL_SIZE_VIEW_WORDS.sheetSizes[value] }))}
      />
      {isRoll && <PrintingField field="rollWidthMm" />}
      <PrintingField field="overlapMm" />
    </>
  )
}

/** One length of the shop's printing. */
export function PrintingField({ field }: { readonly field: keyof typeof PRINTING_RANGES }) {
  const binding = useShopBinding<LengthValue>(`printing.${field}`)
  const units = useShop((state) => state.shop.units)
  return (
    <LengthField label={FULL_SIZE_VIEW_WORDS[field]} binding={binding} range={PRINTING_RANGES[field]} units={units} />
  )
}
