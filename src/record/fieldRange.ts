import type { LengthQuantity } from '../core/quantity.ts'

/** What may stand in a field of the plan, as data: the form, the schema's check and the tests all read it here. */
export type FieldRange =
  | {
      readonly type: 'length'
      readonly quantity: LengthQuantity
      readonly minMm: number
      readonly maxMm: number
      readonly open?: true
      readonly flat?: true
    }
  | { readonly type: 'angle'; readonly minDeg: number; readonly maxDeg: number }
  | { readonly type: 'count'; readonly min: number; readonly max: number; readonly open?: true }
  /** A decimal number in one unit that shops do not choose. */
  | {
      readonly type: 'plain'
      readonly unit: PlainUnit
      readonly min: number
      readonly max: number
      readonly open?: true
    }
  | { readonly type: 'choice' }
  | { readonly type: 'whole' }

export type PlainUnit = 'celsius' | 'percent' | 'newton' | 'gigapascal' | 'hertz' | 'gramsPerMetre'

export const plain = (unit: PlainUnit, min: number, max: number) => ({ type: 'plain', unit, min, max }) as const
const length = (quantity: LengthQuantity, minMm: number, maxMm: number) =>
  ({ type: 'length', quantity, minMm, maxMm }) as const
export const body = (minMm: number, maxMm: number) => length('bodyLength', minMm, maxMm)
export const thin = (minMm: number, maxMm: number) => length('thickness', minMm, maxMm)

export const dome = (minMm: number, maxMm: number) => length('domeRadius', minMm, maxMm)
