import type { Fixture, Fixtures } from '../../src/core/fixture.ts'
import type { NewFixture } from '../../src/record/changes/fixtures.ts'
import { orderStrings } from '../../src/record/order.ts'
import { STEEL_STRING } from './demoModels.ts'

const board = (name: string, radiusMm: number | 'flat'): NewFixture => ({ kind: 'contourBoard', name, radiusMm })
const dish = (name: string, radiusMm: number, diameterMm: number): NewFixture => ({
  kind: 'dish',
  name,
  radiusMm,
  diameterMm,
})

const LIST: readonly NewFixture[] = [
  board('Long board', 1000),
  board('Middle board', 600),
  board('Short board', 400),
  board('Flat board', 'flat'),
  dish('Back dish', 4600, 610),
  dish('Top dish', 8500, 610),
  dish('Small dish', 6000, 460),
  { kind: 'mould', name: 'Meadow mould', outline: STEEL_STRING.plan.outline },
  { kind: 'bendingForm', name: 'Meadow form', outline: STEEL_STRING.plan.outline, insetMm: 3 },
]
const ORDERS = orderStrings(LIST.length)

/** The boards, dishes, mould and form of the demo's shop, by fixed ids. Invented. */
export const DEMO_FIXTURES: Fixtures = Object.fromEntries(
  LIST.map((fixture, i): [string, Fixture] => [
    `f1700000-0000-4000-8000-${String(i + 1).padStart(12, '0')}`,
    { ...fixture, order: ORDERS[i] ?? 'z' },
  ]),
)
