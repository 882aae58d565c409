import { compute } from '../core/compute.ts'
import { fixtureFits, fixturesUsed } from '../core/fixtureFits.ts'
import type { Plan } from '../core/plan.ts'
import type { ShopDoc } from '../record/commission.ts'

/** The shop as a commission's file carries it: of all its fixtures only those that serve this instrument best, no boxes it tapped, and no building orders it keeps. */
export function shopForFile(all: ShopDoc, plan: Plan): ShopDoc {
  const isBare = Object.keys(all.taps).length + Object.keys(all.patterns).length === 0
  const shop = isBare ? all : { ...all, taps: {}, patterns: {} }
  const fixtures = Object.entries(shop.fixtures)
  if (fixtures.length === 0) return shop
  const used = fixturesUsed(fixtureFits(compute(plan), shop.fixtures))
  return { ...shop, fixtures: Object.fromEntries(fixtures.filter(([id]) => used.has(id))) }
}
