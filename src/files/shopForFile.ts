import { compute } from '../core/compute.ts'
import { fixtureFits, fixturesUsed } from '../core/fixtureFits.ts'
import type { Plan } from '../core/plan.ts'
import type { ShopDoc } from '../record/commission.ts'

/** The shop as a commission's file carries it: of all its fixtures only those that serve this instrument best, and no boxes it tapped. */
export function shopForFile(all: ShopDoc, plan: Plan): ShopDoc {
  const shop = Object.keys(all.taps).length === 0 ? all : { ...all, taps: {} }
  const fixtures = Object.entries(shop.fixtures)
  if (fixtures.length === 0) return shop
  const used = fixturesUsed(fixtureFits(compute(plan), shop.fixtures))
  return { ...shop, fixtures: Object.fromEntries(fixtures.filter(([id]) => used.has(id))) }
}
