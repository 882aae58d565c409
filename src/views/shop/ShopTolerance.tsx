import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import { degFromRad, radFromDeg } from '../../core/units/angle.ts'
import { setShopTolerance } from '../../record/changes/tolerances.ts'
import { AngleField, type AngleRange } from '../../ui/AngleField.tsx'
import { CountField, type CountRange } from '../../ui/CountField.tsx'
import { LengthField, type LengthRange } from '../../ui/LengthField.tsx'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { SHOP_WORDS } from '../../words/shop.ts'
import { useBindingTo } from '../useBinding.ts'
import { useShop, useWorkshop } from '../workshop.ts'

const ANGLE: AngleRange = { type: 'angle', minDeg: 0, maxDeg: 10 }
const LENGTH: LengthRange = { type: 'length', quantity: 'thickness', minMm: 0, maxMm: 20 }
const DOME: LengthRange = { type: 'length', quantity: 'domeRadius', minMm: 0, maxMm: 100 }
const COUNT: CountRange = { type: 'count', min: 0, max: 20 }

/** The shop's tolerance of one number: its own, or the one it started with, or none. */
export function ShopTolerance({ number }: { readonly number: NumberKey }) {
  const { shop } = useWorkshop()
  const isOpen = useShop((state) => state.status === 'ready')
  const units = useShop((state) => state.shop.units)
  const own = useShop((state) => state.shop.tolerances[number])
  const { tolerance: started, quantity } = aboutNumber(number)
  const value = own === undefined ? started : own
  const name = NUMBER_NAMES[number]
  const bound = useBindingTo<number | 'flat' | null>({
    docId: 'shop',
    name: `tolerances.${number}`,
    value: value !== null && quantity === 'angle' ? degFromRad(value) : value,
    readOnly: !isOpen,
    take: (next, gesture) => {
      if (typeof next !== 'number') return
      shop.edit(setShopTolerance(number, quantity === 'angle' ? radFromDeg(next) : next), gesture)
    },
  })
  const plain = { ...bound, value: typeof bound.value === 'number' ? bound.value : null }
  return (
    <li className="tolerance-row">
      {value === null ? (
        <div className="field">
          <span className="field-label">{name}</span>
          <span className="tolerance-none">{SHOP_WORDS.noTolerance}</span>
        </div>
      ) : quantity === 'angle' ? (
        <AngleField label={name} binding={plain} range={ANGLE} />
      ) : quantity === 'count' ? (
        <CountField label={name} binding={plain} range={COUNT} />
      ) : (
        <LengthField label={name} binding={bound} range={quantity === 'domeRadius' ? DOME : LENGTH} units={units} />
      )}
      {value === null ? (
        <button
          className="button button-plain"
          type="button"
          disabled={!isOpen}
          aria-label={`${name}: ${SHOP_WORDS.setOne}`}
          onClick={() => shop.edit(setShopTolerance(number, started === null ? FIRST[quantity] : 'asStarted'))}
        >
          {SHOP_WORDS.setOne}
        </button>
      ) : (
        <button
          className="button button-plain"
          type="button"
          disabled={!isOpen}
          aria-label={`${name}: ${SHOP_WORDS.none}`}
          onClick={() => shop.edit(setShopTolerance(number, started === null ? 'asStarted' : null))}
        >
          {SHOP_WORDS.none}
        </button>
      )}
    </li>
  )
}

/** What a number without a starting tolerance gets when it is to have one: mm, rad, pieces. Common practice. */
const FIRST = {
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
} as const
