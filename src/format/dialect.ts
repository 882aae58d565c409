import Fraction from 'fraction.js'
import type { LengthQuantity, ShopUnits } from '../core/quantity.ts'
import { MM_PER_INCH, MM_PER_METRE } from '../core/units/length.ts'

/** One unit a maker may name. `size` is in mm for lengths, in degrees for angles, in N for forces, in GPa for stiffness. */
export type Unit = {
  /** What is written behind a number to name this unit. */
  readonly mark: string
  readonly size: Fraction
  readonly family: 'metric' | 'inch' | 'arc' | 'piece' | 'decimal' | 'time'
  /** The unit a bare number takes straight after this one: the 8 of 14'8 is in inches. */
  readonly below: Unit | null
}

/** How a bare number looks, which is all that tells inches from thousandths in a shop that speaks of thousandths. */
export type BareLook = 'decimalBelowOne' | 'other' | 'both'

/** What a field's number may be written in, and what it means when no unit is named. */
export type Dialect = {
  readonly units: ReadonlyMap<string, Unit>
  readonly bareUnit: (look: BareLook) => Unit
  /** The unit of a bare fraction over 2, 4, 8 ... 128; null where fractions are plain numbers. */
  readonly fractionUnit: Unit | null
  /** A bare 15 1/2 is asked: the field's own unit is so large that the habit of inches is in doubt. */
  readonly asksMixed: boolean
  /** What the comma of 1,234 is. */
  readonly comma: 'asked' | 'decimal' | 'grouping'
  readonly allowsRadiusMark: boolean
}

const mm: Unit = { mark: ' mm', size: new Fraction(1), family: 'metric', below: null }
const cm: Unit = { mark: ' cm', size: new Fraction(10), family: 'metric', below: null }
const metre: Unit = { mark: ' m', size: new Fraction(MM_PER_METRE), family: 'metric', below: null }
const thou: Unit = { mark: ' thou', size: new Fraction(MM_PER_INCH).div(1000), family: 'inch', below: null }
const inch: Unit = { mark: '"', size: new Fraction(MM_PER_INCH), family: 'inch', below: null }
const foot: Unit = { mark: ' ft', size: inch.size.mul(12), family: 'inch', below: inch }
const arcSecond: Unit = { mark: '"', size: new Fraction(1, 3600), family: 'arc', below: null }
const arcMinute: Unit = { mark: "'", size: new Fraction(1, 60), family: 'arc', below: arcSecond }
const degree: Unit = { mark: '°', size: new Fraction(1), family: 'arc', below: arcMinute }
const piece: Unit = { mark: '', size: new Fraction(1), family: 'piece', below: null }

const named = (table: readonly (readonly [Unit, string])[]): ReadonlyMap<string, Unit> =>
  new Map(table.flatMap(([unit, names]) => names.split(' ').map((name) => [name, unit] as const)))

const LENGTH_UNITS = named([
  [mm, 'mm millimetre millimetres millimeter millimeters'],
  [cm, 'cm centimetre centimetres centimeter centimeters'],
  [metre, 'm metre metres meter meters'],
  [thou, 'thou thous thousandth thousandths'],
  [inch, '" in inch inches'],
  [foot, "' ft foot feet"],
])

const ANGLE_UNITS = named([
  [degree, '° deg degs degree degrees'],
  [arcMinute, "' min minute minutes"],
  [arcSecond, '" sec second seconds'],
])

const BARE_UNIT = {
  mm: () => mm,
  metres: () => metre,
  feetInches: () => foot,
  decimalInch: () => inch,
  fractionalInch: () => inch,
  // 85 is eighty-five thousandths; .085 can only be the same thickness written in inches.
  thousandths: (look: BareLook) => (look === 'decimalBelowOne' ? inch : thou),
} as const

/**
 * How lengths of one kind are written in this shop.
 *
 * A bare fraction over a power of two is in inches whatever the shop's unit: nobody divides a millimetre by 64 (trade habit).
 */
export function lengthDialect(quantity: LengthQuantity, units: ShopUnits): Dialect {
  const bareUnit = BARE_UNIT[units[quantity]]
  const usual = bareUnit('other')
  return {
    units: LENGTH_UNITS,
    bareUnit,
    fractionUnit: inch,
    asksMixed: usual === foot || usual === metre,
    comma: 'asked',
    allowsRadiusMark: true,
  }
}

/** Angles: degrees, with minutes and seconds of arc when they are marked; a comma is the decimal sign. */
export const ANGLE_DIALECT: Dialect = {
  units: ANGLE_UNITS,
  bareUnit: () => degree,
  fractionUnit: null,
  asksMixed: false,
  comma: 'decimal',
  allowsRadiusMark: false,
}

/** Counts: no unit, and the comma of 1,234 sets off thousands since a count has no decimals. */
export const COUNT_DIALECT: Dialect = {
  units: new Map(),
  bareUnit: () => piece,
  fractionUnit: null,
  asksMixed: false,
  comma: 'grouping',
  allowsRadiusMark: false,
}

const percent: Unit = { mark: '%', size: new Fraction(1), family: 'decimal', below: null }
const celsius: Unit = { mark: ' °C', size: new Fraction(1), family: 'decimal', below: null }
const newton: Unit = { mark: ' N', size: new Fraction(1), family: 'decimal', below: null }
const kilonewton: Unit = { mark: ' kN', size: new Fraction(1000), family: 'decimal', below: null }
const gigapascal: Unit = { mark: ' GPa', size: new Fraction(1), family: 'decimal', below: null }
const megapascal: Unit = { mark: ' MPa', size: new Fraction(1, 1000), family: 'decimal', below: null }
const hertz: Unit = { mark: ' Hz', size: new Fraction(1), family: 'decimal', below: null }
const gramPerMetre: Unit = { mark: ' g/m', size: new Fraction(1), family: 'decimal', below: null }

const decimals = (usual: Unit, units: Dialect['units']): Dialect => ({
  units,
  bareUnit: () => usual,
  fractionUnit: null,
  asksMixed: false,
  comma: 'asked',
  allowsRadiusMark: false,
})

/** A decimal number in one unit that shops do not choose: percent, newtons, gigapascals; the comma of 1,234 is asked. */
export const DECIMAL_DIALECTS: Readonly<
  Record<'percent' | 'celsius' | 'newton' | 'gigapascal' | 'hertz' | 'gramsPerMetre', Dialect>
> = {
  percent: decimals(percent, named([[percent, '% percent']])),
  celsius: decimals(celsius, named([[celsius, '° °c c celsius']])),
  newton: decimals(
    newton,
    named([
      [newton, 'n newton newtons'],
      [kilonewton, 'kn'],
    ]),
  ),
  gigapascal: decimals(
    gigapascal,
    named([
      [gigapascal, 'gpa'],
      [megapascal, 'mpa'],
    ]),
  ),
  hertz: decimals(hertz, named([[hertz, 'hz hertz']])),
  gramsPerMetre: decimals(gramPerMetre, named([[gramPerMetre, 'g g/m']])),
}
