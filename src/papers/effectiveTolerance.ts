import { aboutNumber, type NumberKey } from '../core/catalogue.ts'

/** Tolerances by number, mm or rad; null says that a number carries none; a number left out says nothing. */
export type Tolerances = Readonly<Partial<Record<NumberKey, number | null | undefined>>>

/** The tolerance a number is built to, mm or rad: the instrument's own, else the shop's, else the catalogue's starting one. null: none. */
export function effectiveTolerance(key: NumberKey, own: Tolerances, shop: Tolerances): number | null {
  const said = own[key] !== undefined ? own[key] : shop[key]
  return said !== undefined ? said : aboutNumber(key).tolerance
}
