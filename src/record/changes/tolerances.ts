import type { NumberKey } from '../../core/numbers.ts'
import type { CommissionRecord, ShopRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'

/** Sets an instrument's own tolerance of a number, mm or rad; null: prints none; 'asShop': falls back to the shop's. */
export function setTolerance(key: NumberKey, tolerance: number | null | 'asShop'): Recipe<CommissionRecord> {
  return ({ doc }) => setOrForget(doc.tolerances, key, tolerance === 'asShop' ? undefined : tolerance)
}

/** Sets the shop's tolerance of a number, mm or rad; null: prints none; 'asStarted': falls back to the starting one. */
export function setShopTolerance(key: NumberKey, tolerance: number | null | 'asStarted'): Recipe<ShopRecord> {
  return ({ doc }) => setOrForget(doc.tolerances, key, tolerance === 'asStarted' ? undefined : tolerance)
}

function setOrForget(tolerances: Partial<Record<NumberKey, number | null>>, key: NumberKey, value?: number | null) {
  if (value === undefined) delete tolerances[key]
  else tolerances[key] = value
}
