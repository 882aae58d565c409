import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import type { Quantity } from '../../core/quantity.ts'
import { degFromRad, radFromDeg } from '../../core/units/angle.ts'
import { setTolerance } from '../../record/changes/tolerances.ts'
import { AngleField, type AngleRange } from '../../ui/AngleField.tsx'
import { CountField } from '../../ui/CountField.tsx'
import { LengthField, type LengthRange } from '../../ui/LengthField.tsx'
import { HELP_WORDS } from '../../words/bodySheets.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetField } from './useSheetField.ts'

const ANGLE: AngleRange = { type: 'angle', minDeg: 0, maxDeg: 10 }
const LENGTH: LengthRange = { type: 'length', quantity: 'thickness', minMm: 0, maxMm: 20 }
const DOME: LengthRange = { type: 'length', quantity: 'domeRadius', minMm: 0, maxMm: 100 }

/** What a number without any tolerance starts from when it is given one: mm, rad, pieces. Common practice. */
export const FIRST_TOLERANCE = {
  bodyLength: 0.5,
  thickness: 0.1,
  fineLength: 0.1,
  across: 0.5,
  domeRadius: 50,
  angle: radFromDeg(0.3),
  count: 1,
  area: null,
  volume: null,
  ratio: null,
  interval: null,
  resonance: null,
  force: null,
  stress: null,
  torque: null,
  frequency: null,
  linearMass: null,
} as const satisfies Record<Quantity, number | null>

/** How far a number may be off, either way; stored in mm or radians. */
export function ToleranceField({ number, value }: { readonly number: NumberKey; readonly value: number }) {
  const { units } = useSheetBench()
  const { quantity } = CATALOGUE[number]
  const name = `tolerances.${number}`
  const length = useSheetField<number | 'flat' | null>(name, value, (next) =>
    setTolerance(number, next === 'flat' ? null : next),
  )
  const angle = useSheetField<number | null>(name, degFromRad(value), (next) =>
    setTolerance(number, next === null ? null : radFromDeg(next)),
  )
  const count = useSheetField<number | null>(name, value, (next) => setTolerance(number, next))
  switch (quantity) {
    case 'angle':
      return <AngleField label={HELP_WORDS.toleranceField} binding={angle} range={ANGLE} />
    case 'bodyLength':
    case 'thickness':
    case 'fineLength':
    case 'across':
      return <LengthField label={HELP_WORDS.toleranceField} binding={length} range={LENGTH} units={units} />
    case 'domeRadius':
      return <LengthField label={HELP_WORDS.toleranceField} binding={length} range={DOME} units={units} />
    case 'count':
      return <CountField label={HELP_WORDS.toleranceField} binding={count} range={{ type: 'count', min: 0, max: 20 }} />
    case 'area':
    case 'volume':
    case 'ratio':
    case 'interval':
    case 'resonance':
    case 'force':
    case 'stress':
    case 'torque':
    case 'frequency':
    case 'linearMass':
      return null
  }
}
