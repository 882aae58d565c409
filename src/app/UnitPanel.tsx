import type { LengthQuantity } from '../core/quantity.ts'
import { UNIT_CHOICES } from '../core/quantity.ts'
import { ChoiceField } from '../ui/ChoiceField.tsx'
import { useShopBinding } from '../views/useBinding.ts'
import { useShop } from '../views/workshop.ts'
import { UNIT_KIND_WORDS, UNIT_WORDS } from '../words/instrument.ts'

/** What lengths on the body are read in just now. */
export const useUnitName = (): string => UNIT_WORDS[useShop((state) => state.shop.units.bodyLength)]

/** The units of the shop for each kind of length, at the title block of any sheet. */
export function UnitPanel({ id }: { readonly id: string }) {
  return (
    <div className="title-block-panel" id={id} popover="auto">
      <UnitField quantity="bodyLength" />
      <UnitField quantity="domeRadius" />
      <UnitField quantity="thickness" />
    </div>
  )
}

function UnitField({ quantity }: { readonly quantity: LengthQuantity }) {
  const binding = useShopBinding<keyof typeof UNIT_WORDS>(`units.${quantity}`)
  return (
    <ChoiceField
      label={UNIT_KIND_WORDS[quantity]}
      binding={binding}
      choices={UNIT_CHOICES[quantity].map((value) => ({ value, label: UNIT_WORDS[value] }))}
    />
  )
}
