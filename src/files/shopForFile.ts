import { compute } from '../core/compute.ts'
import { fixtureFits, fixturesUsed } from '../core/fixtureFits.ts'
import type { Plan } from '../core/plan.ts'
import type { ShopDoc } from '../record/commission.ts'

/** The shop as a commission's file carries it: of all its fixtures only those that serve this instrument best. */
export function shopForFile(shop: ShopDoc, plan: Plan): ShopDoc {
  const all = Object.entries(shop.fixtures)
  if (all.length === 0) return shop
  const used = fixturesUsed(fixtureFits(compute(plan), shop.fixtures))
  return { ...shop, fixtures: Object.fromEntries(all.filter(([id]) => used.has(id))) }
}
