import type { NumberKey } from '../../core/catalogue.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { ReadingMark } from '../../ui/ReadingMark.tsx'
import { columnUnit } from './columnUnit.ts'

interface Props {
  readonly heading: string
  readonly quantity: Quantity | null
  readonly units: ShopUnits
  /** The number the column is about, and the way to what it is. */
  /** Something under it came out otherwise than planned. */
  readonly isFromReading?: boolean
  readonly about?: { readonly key: NumberKey; readonly openHelp: (key: NumberKey) => void } | null
}

/** Head of a column: its name, and the unit of what stands under it. */
export function ColumnHead({ heading, quantity, units, isFromReading = false, about = null }: Props) {
  const unit = columnUnit(quantity, units)
  return (
    <th scope="col" data-figures={quantity !== null}>
      {about === null ? (
        heading
      ) : (
        <button className="number-name" type="button" onClick={() => about.openHelp(about.key)}>
          {heading}
        </button>
      )}
      {isFromReading && <ReadingMark />}
      {unit !== '' && <span className="column-unit"> {unit}</span>}
    </th>
  )
}
