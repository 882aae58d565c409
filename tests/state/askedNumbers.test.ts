import { describe, expect, it } from 'vitest'
import { createStore } from 'zustand/vanilla'
import { asBuilt, roundOf } from '../../src/core/asBuilt.ts'
import { compute, type Computed } from '../../src/core/compute.ts'
import type { NumberKey } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import type { NewReading } from '../../src/record/bench/measured.ts'
import { pressClock } from '../../src/record/bench/work.ts'
import { inOrder } from '../../src/record/order.ts'
import { createAsked } from '../../src/state/askedNumbers.ts'
import type { CommissionState } from '../../src/state/commissionState.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk } from '../storage/fixture.ts'
import { openTab, type Tab } from './fixture.ts'

const state = ({ workshop }: Tab) => workshop.commission.store.getState()

async function openedTab(): Promise<Tab> {
  const tab = await openTab(freshDisk())
  await tab.workshop.commission.open(valueIn(await tab.workshop.list.create(STEEL_BEGINNING)))
  return tab
}

const reading = (number: NumberKey, value: number, more: Partial<NewReading> = {}): NewReading => ({
  number,
  value,
  row: 0,
  side: 'whole',
  alongMm: null,
  entry: null,
  stageId: null,
  typed: String(value),
  gauge: '',
  planned: 'none',
  replaces: null,
  ...more,
})
const DEPTH: NumberKey = 'sides.depthAtTailMm'
const THICKNESS: NumberKey = 'sides.thicknessMm'

describe('what a number is asked to be', () => {
  it('is the number as it stands, while nothing was read', async () => {
    const tab = await openedTab()
    expect(tab.workshop.askedOf(DEPTH)?.computed).toBe(state(tab).computed)
    expect(tab.workshop.askedOf(DEPTH)?.plan).toBe(state(tab).record?.doc.plan)
  })

  it('is not moved by a reading of its own, and is by all others', async () => {
    const tab = await openedTab()
    valueIn(tab.workshop.commission.addReading(reading(DEPTH, 107.5)))
    expect(state(tab).computed?.depthMm).toBeCloseTo(107.5, 6)
    expect(tab.workshop.askedOf(DEPTH)?.computed).toEqual({ depthMm: 106 })
    expect(tab.workshop.askedOf(THICKNESS)?.computed.depthMm).toBeCloseTo(107.5, 6)
    valueIn(tab.workshop.commission.addReading(reading(THICKNESS, 2.4, { side: 'bass' })))
    const asked = tab.workshop.askedOf(DEPTH)
    expect(asked?.computed).toEqual({ depthMm: 106 })
    expect(asked?.plan.rim.sideThicknessMm).toBe(2.4)
    expect(tab.workshop.askedOf(THICKNESS)?.plan.rim.sideThicknessMm).toBe(2.2)
  })

  it('is worked out once, whatever else happens at the bench', async () => {
    const tab = await openedTab()
    valueIn(tab.workshop.commission.addReading(reading(DEPTH, 107.5)))
    valueIn(tab.workshop.commission.addReading(reading(THICKNESS, 2.4)))
    const first = tab.workshop.askedOf(DEPTH)
    const before = tab.computed()
    const [stageId] = inOrder(state(tab).record!.doc.stages)[0]!
    valueIn(
      tab.workshop.commission.addFacts((row, meta) => [pressClock(row, { stageId, act: 'start', sharedBy: 1 }, meta)]),
    )
    expect(tab.workshop.askedOf(DEPTH)?.computed).toBe(first?.computed)
    expect(tab.computed()).toBe(before)
  })

  it('goes back to the plan with a reading that is not used, and with a plan that changes', async () => {
    const tab = await openedTab()
    valueIn(tab.workshop.commission.addReading(reading(THICKNESS, 2.4)))
    const { id } = state(tab).facts.at(-1)!
    expect(tab.workshop.askedOf(DEPTH)?.plan.rim.sideThicknessMm).toBe(2.4)
    valueIn(tab.workshop.commission.switchReading(id, false))
    expect(tab.workshop.askedOf(DEPTH)?.plan.rim.sideThicknessMm).toBe(2.2)
    valueIn(tab.workshop.commission.switchReading(id, true))
    valueIn(tab.workshop.commission.addReading(reading(DEPTH, 107.5)))
    valueIn(tab.workshop.commission.change('plan.rim.depthAtTailMm', 104, tab.workshop.newGesture()))
    expect(tab.workshop.askedOf(DEPTH)?.computed).toEqual({ depthMm: 104 })
  })

  it('says of which number a reading is kept for the record only', async () => {
    const tab = await openedTab()
    expect(tab.workshop.askedOf(DEPTH)?.defines).toBe(true)
    expect(tab.workshop.askedOf('blocks.tail.contourRiseMm')?.defines).toBe(false)
  })

  it('is nothing while no instrument is open', async () => {
    const tab = await openTab(freshDisk())
    expect(tab.workshop.askedOf(DEPTH)).toBeNull()
  })
})

describe('all numbers of an instrument', () => {
  const { plan } = STEEL_STRING
  /** A store as it stands after these readings. */
  function asked(readings: readonly NewReading[]) {
    const facts = readings.map((one, i) => ({ kind: 'reading' as const, id: `r${i}`, ...one }))
    const built = asBuilt(plan, facts, () => true)
    const store = createStore<CommissionState<Computed>>(
      () =>
        ({
          record: { doc: { plan } },
          builtDoc: { plan: built.plan },
          computed: compute(built.plan),
          facts,
        }) as unknown as CommissionState<Computed>,
    )
    const build = (of: Plan, left: Parameters<typeof asBuilt>[1]) => {
      const next = asBuilt(of, left, () => true)
      return { ...next, computed: compute(next.plan) }
    }
    return createAsked({ store, build, roundOf, computedOf: compute })
  }

  it('a station is asked what it was, whichever stations of either side were read; what comes later follows them', () => {
    const { rim } = compute(plan).numbers
    const at = (row: number, side: 'bass' | 'treble', off: number) =>
      reading('rim[].depthMm', rim[row]!.depthMm + off, { row, side, alongMm: rim[row]!.alongOuterMm })
    const of = asked([at(2, 'bass', 0.8), at(9, 'treble', 0.4), at(15, 'bass', 0.6)])
    for (const key of ['rim[].depthMm', 'places[].depthMm'] as const)
      expect(of(key)?.computed.numbers).toEqual(compute(plan).numbers)
    const moved = of('sides.bodyDepthAtTailMm')!.computed.numbers.sides.bodyDepthAtTailMm
    expect(moved).toBeGreaterThan(compute(plan).numbers.sides.bodyDepthAtTailMm + 0.2)
  })

  it('equals the numbers of a plan that had the other readings from the start', () => {
    const of = asked([
      reading('back.radiusMm', 4800),
      reading('rim[].depthMm', 100, { row: 4, side: 'bass', alongMm: compute(plan).numbers.rim[4]!.alongOuterMm }),
    ])
    const planned = compute(withField(plan, 'back.radiusMm', 4800)).numbers
    expect(of('rim[].depthMm')?.computed.numbers.rim).toEqual(planned.rim)
  })
})
