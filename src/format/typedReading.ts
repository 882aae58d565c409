import type { Quantity, ShopUnits } from '../core/quantity.ts'
import { STARTING_UNITS } from '../core/quantity.ts'
import { radFromDeg } from '../core/units/angle.ts'
import type { EntryProblem } from './entryProblem.ts'
import type { Figure } from './figure.ts'
import { formatQuantity } from './formatQuantity.ts'
import { formatTolerance } from './formatTolerance.ts'
import { parseAngle } from './parseAngle.ts'
import { parseLength } from './parseLength.ts'

/** What a bare number means while a reading is typed. */
export type TypedUnit = 'mm' | 'inch' | 'thou' | 'feet' | 'metres' | 'degrees'

export type TypedReading =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: EntryProblem }

const ON_THE_BODY: readonly TypedUnit[] = ['mm', 'inch', 'thou']
const UNITS: Readonly<Partial<Record<Quantity, readonly TypedUnit[]>>> = {
  bodyLength: ON_THE_BODY,
  fineLength: ON_THE_BODY,
  across: ON_THE_BODY,
  thickness: ON_THE_BODY,
  domeRadius: ['mm', 'inch', 'feet', 'metres'],
  angle: ['degrees'],
}

/** The units a number of this kind can be read in; none: it is not read at the bench. */
export const typedUnits = (quantity: Quantity): readonly TypedUnit[] => UNITS[quantity] ?? []

/** Units whose parts are halves, quarters, eighths: they get keys for these. */
export const hasFractions = (unit: TypedUnit): boolean => unit === 'inch' || unit === 'feet'

/** The unit this shop reads a number of this kind in. */
export function shopTypedUnit(quantity: Quantity, units: ShopUnits): TypedUnit {
  if (quantity === 'angle') return 'degrees'
  if (quantity === 'thickness') return units.thickness === 'mm' ? 'mm' : 'thou'
  if (quantity === 'domeRadius') return ({ feetInches: 'feet', metres: 'metres', mm: 'mm' } as const)[units.domeRadius]
  return units.bodyLength === 'mm' ? 'mm' : 'inch'
}

/** What was typed in that unit, or with one of its own, in mm or rad. */
export function parseReading(text: string, unit: TypedUnit): TypedReading {
  if (unit === 'degrees') {
    const angle = parseAngle(text)
    return angle.ok ? { ok: true, value: radFromDeg(angle.deg) } : angle
  }
  const length = parsed(text, unit)
  return length.ok ? { ok: true, value: length.mm } : length
}

function parsed(text: string, unit: Exclude<TypedUnit, 'degrees'>) {
  switch (unit) {
    case 'mm':
      return parseLength(text, 'bodyLength', { ...STARTING_UNITS, bodyLength: 'mm' })
    case 'inch':
      return parseLength(text, 'bodyLength', { ...STARTING_UNITS, bodyLength: 'decimalInch' })
    case 'thou':
      return parseLength(text, 'thickness', { ...STARTING_UNITS, thickness: 'thousandths' })
    case 'feet':
      return parseLength(text, 'domeRadius', { ...STARTING_UNITS, domeRadius: 'feetInches' })
    case 'metres':
      return parseLength(text, 'domeRadius', { ...STARTING_UNITS, domeRadius: 'metres' })
  }
}

const MARKS: Readonly<Record<TypedUnit, string>> = {
  mm: ' mm',
  inch: ' in',
  thou: ' thou',
  feet: ' ft',
  metres: ' m',
  degrees: '°',
}

/** What was typed, with its unit behind it where it carries none of its own: so it can be read again in any shop. */
export const withTypedUnit = (text: string, unit: TypedUnit): string =>
  /[a-z"'°]/iu.test(text) ? text.trim() : `${text.trim()}${MARKS[unit]}`

/** A reading as a figure: as fine as a caliper shows it, where the number itself is only asked to a tenth. */
export function formatReading(value: number, quantity: Quantity, units: ShopUnits): Figure {
  const isCoarse = quantity === 'bodyLength' && units.bodyLength === 'mm'
  return isCoarse ? formatTolerance(value, quantity, units) : formatQuantity(value, quantity, units)
}
