import { beforeEach, describe, expect, it } from 'vitest'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { type Computed, compute } from '../../src/core/compute.ts'
import { keptName } from '../../src/core/keptNumbers.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import { buildLoaded, loadAsBuilt, loadEngine, prepareReadings, roundLoaded } from '../../src/app/engine.ts'
import type { NewReading } from '../../src/record/bench/measured.ts'
import { fieldsBehind, takeChangeBack } from '../../src/record/changes/takeChangeBack.ts'
import { stagesDone } from '../../src/record/facts.ts'
import { inOrder } from '../../src/record/order.ts'
import { figuresOfStage, getsBox } from '../../src/record/patterns/figuresOfStage.ts'
import type { StageKey } from '../../src/record/patterns/stages.ts'
import { createBuiltFits } from '../../src/state/builtFit.ts'
import { createSignedOffs } from '../../src/state/signedOff.ts'
import { keepAsBuilt, redoToPlan } from '../../src/state/keepAsBuilt.ts'
import { openWorkshop, type Workshop } from '../../src/state/workshop.ts'
import { countedIds, STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { withField } from '../generators/plans.ts'
import { databaseOn, freshDisk } from '../storage/fixture.ts'

const KEYS: readonly StageKey[] = ['thicknessSides', 'bendSides', 'radiusRim', 'trueRim']
const figuresOf = (key: StageKey) => figuresOfStage(key, KEYS)
const toleranceOf = (key: NumberKey) => aboutNumber(key).tolerance

let workshop: Workshop<Computed>
let fits: ReturnType<typeof createBuiltFits<Computed>>
let builds = 0
beforeEach(async () => {
  await Promise.all([loadEngine(), loadAsBuilt()])
  builds = 0
  workshop = await openWorkshop({
    build: (...asked) => {
      builds += 1
      return buildLoaded(...asked)
    },
    prepareReadings,
    roundOf: roundLoaded,
    startingTolerance: () => null,
    onNotice: () => undefined,
    database: databaseOn(freshDisk()),
    locks: undefined,
    newId: countedIds('6'),
    requestPersistence: async () => 'kept',
  })
  await workshop.commission.open(valueIn(await workshop.list.create({ ...STEEL_BEGINNING, stages: KEYS })))
  fits = createBuiltFits({ build: workshop.build, signedOffs: createSignedOffs(workshop.build, state) })
})

const state = () => workshop.commission.store.getState()
const plan = (): Plan => state().record!.doc.plan
const stageOf = (key: StageKey): string => inOrder(state().record!.doc.stages).find(([, one]) => one.key === key)![0]
const fit = () => fits.fitOf(state(), toleranceOf)
const change = (field: string, value: unknown) =>
  valueIn(workshop.commission.change(`plan.${field}`, value, workshop.newGesture()))
function sign(key: StageKey): void {
  const { numbers } = state().computed!
  const kept = Object.fromEntries(
    figuresOf(key).numbers.flatMap((one) => readNumbers(numbers, one).map((value, row) => [keptName(one, row), value])),
  )
  valueIn(workshop.commission.markStageDone(stageOf(key), kept))
}
const READ: NewReading = {
  stageId: null,
  number: 'sides.thicknessMm',
  row: 0,
  side: 'whole',
  value: 2.5,
  alongMm: null,
  entry: null,
  typed: '2.5',
  gauge: '',
  planned: 2.2,
  replaces: null,
}
const read = (more: Partial<NewReading>) => valueIn(workshop.commission.addReading({ ...READ, ...more }))
const listedAt = (key: StageKey) => fit()?.stages.find(({ stageId }) => stageId === stageOf(key))
const named = (key: StageKey) => listedAt(key)?.numbers.map(({ name }) => name) ?? []

/** What a stage that was built to one plan and is asked for another no longer fits: each number worked out by itself. */
function expected(key: StageKey, then: Plan, now: Plan): string[] {
  const [before, after] = [compute(then).numbers, compute(now).numbers]
  return figuresOf(key).numbers.flatMap((one) => {
    const tolerance = aboutNumber(one).tolerance
    if (tolerance === null || !getsBox(figuresOf(key), one)) return []
    return readNumbers(before, one).flatMap((value, row) => {
      const asked = readNumbers(after, one)[row]
      const isOff = typeof value === 'number' && typeof asked === 'number' && Math.abs(value - asked) > tolerance
      return isOff ? [keptName(one, row)] : []
    })
  })
}

describe('what is already built', () => {
  it('costs nothing while no plan has changed, whatever is signed, read or noted', () => {
    sign('thicknessSides')
    sign('radiusRim')
    read({ number: 'sides.depthAtTailMm', value: 104 })
    builds = 0
    expect(fit()).toBeNull()
    change('rim.depthAtTailMm', 107)
    valueIn(workshop.commission.undo())
    builds = 0
    expect(fit()).toBeNull()
    expect(builds).toBe(0)
  })

  it('is listed by stage where a change of the plan moved it beyond its tolerance, and only that', () => {
    const then = plan()
    sign('thicknessSides')
    sign('radiusRim')
    change('rim.depthAtTailMm', 109)
    expect(named('radiusRim').toSorted()).toEqual(expected('radiusRim', then, plan()).toSorted())
    expect(named('radiusRim').length).toBeGreaterThan(3)
    expect(named('thicknessSides')).toEqual([])
    change('rim.sideThicknessMm', 2.6)
    expect(named('thicknessSides')).toEqual(expected('thicknessSides', then, plan()))
    expect(fit()!.stages.map(({ stageId }) => stageId)).toEqual([stageOf('thicknessSides'), stageOf('radiusRim')])
    const things = fit()!.stages.map(({ numbers }) => new Set(numbers.map(({ place }) => place.key)).size)
    expect(fit()!.count).toBe(things.reduce((sum, one) => sum + one, 0))
  })

  it('is not listed because of a reading alone, nor of another step of the stations', () => {
    sign('radiusRim')
    sign('thicknessSides')
    read({ number: 'sides.depthAtTailMm', value: 111 })
    read({ value: 2.8 })
    expect(fit()).toBeNull()
    change('rim.stationStepMm', 7)
    expect(fit()?.count).toBe(0)
    change('plates.backMm', plan().plates.backMm + 0.01)
    expect(named('radiusRim')).toEqual([])
  })

  it('is judged by what was read of it, and a reading falls silent once the specification of that very thing changes', () => {
    read({ value: 2.5 })
    sign('thicknessSides')
    change('rim.depthAtTailMm', 108)
    expect(named('thicknessSides')).toEqual([])
    change('rim.sideThicknessMm', 2)
    expect(listedAt('thicknessSides')?.numbers).toMatchObject([
      { name: 'sides.thicknessMm', wood: 2.5, from: 'read', asked: 2 },
    ])
    change('rim.sideThicknessMm', 2.45)
    expect(named('thicknessSides')).toEqual([])
  })

  it('is counted anew only when something it follows from has changed', () => {
    sign('radiusRim')
    change('rim.depthAtTailMm', 109)
    const before = fit()
    builds = 0
    expect(fit()).toBe(before)
    expect(builds).toBe(0)
  })
})

describe('the three ways on', () => {
  beforeEach(() => {
    sign('thicknessSides')
    sign('radiusRim')
    sign('trueRim')
    change('rim.depthAtTailMm', 109)
    change('rim.sideThicknessMm', 2.6)
  })
  const keep = (key: StageKey) =>
    valueIn(workshop.commission.addFacts(keepAsBuilt(fits, fit()!, listedAt(key)!, workshop.newGesture)))
  const undone = (before: ReturnType<typeof named>, key: StageKey) => {
    valueIn(workshop.commission.undo())
    expect(named(key)).toEqual(before)
  }

  it('taking the change back sets what the listed numbers hang on, and nothing else', () => {
    const before = named('radiusRim')
    const { signed, numbers } = listedAt('radiusRim')!
    const keys = numbers.map(({ place }) => place.key)
    expect(fieldsBehind(keys, signed.plan, plan())).toEqual(['rim.depthAtTailMm'])
    valueIn(workshop.commission.edit(takeChangeBack(['rim.depthAtTailMm'], signed.plan)))
    expect(plan().rim).toMatchObject({ depthAtTailMm: 106, sideThicknessMm: 2.6 })
    expect(named('radiusRim')).toEqual([])
    expect(named('thicknessSides')).toEqual(['sides.thicknessMm'])
    undone(before, 'radiusRim')
  })

  it('keeping the work empties the list, and all later numbers are those of a plan with the built values', () => {
    const before = named('trueRim')
    expect(before.length).toBeGreaterThan(10)
    keep('trueRim')
    expect(named('trueRim')).toEqual([])
    expect(named('thicknessSides')).toEqual(['sides.thicknessMm'])
    const wanted = compute(withField(plan(), 'rim.depthAtTailMm', 106)).numbers
    for (const key of NUMBER_KEYS)
      for (const [row, value] of readNumbers(state().computed!.numbers, key).entries()) {
        const other = readNumbers(wanted, key)[row]
        if (typeof value !== 'number' || typeof other !== 'number') expect(value, key).toBe(other)
        else expect(Math.abs(value - other), key).toBeLessThan(1e-5 * Math.max(1, Math.abs(other)))
      }
    undone(before, 'trueRim')
    expect(state().computed!.numbers.sides.depthAtTailMm).toBe(109)
  })

  it('what is kept is measured by what is asked once the built values stand', () => {
    change('back.radiusMm', 4200)
    expect(named('trueRim').some((name) => name.startsWith('blocks.'))).toBe(true)
    keep('trueRim')
    expect(named('trueRim')).toEqual([])
  })

  it('keeping work that defines nothing on the plan takes it off the list, and moves no number', () => {
    const before = named('radiusRim')
    const { numbers } = state().computed!
    keep('radiusRim')
    expect(named('radiusRim')).toEqual([])
    expect(state().computed!.numbers).toEqual(numbers)
    undone(before, 'radiusRim')
  })

  it('work that was kept is listed again once something else is asked of it', () => {
    keep('radiusRim')
    expect(named('radiusRim')).toEqual([])
    change('rim.depthAtTailMm', 112)
    expect(named('radiusRim').length).toBeGreaterThan(3)
  })

  it('doing the stage again opens it, with its reason, and turns off what was read at its work', () => {
    const stageId = stageOf('thicknessSides')
    read({ stageId, value: 2.3 })
    const before = named('radiusRim')
    const readBefore = state().computed!.numbers.sides.thicknessMm
    valueIn(workshop.commission.addFacts(redoToPlan(stageId, 'too thin by now', state().facts)))
    expect(stagesDone(state().facts).has(stageId)).toBe(false)
    expect(state().facts.find(({ kind }) => kind === 'redo')).toMatchObject({ stageId, reason: 'too thin by now' })
    expect([readBefore, state().computed!.numbers.sides.thicknessMm]).toEqual([2.3, 2.6])
    expect(named('thicknessSides')).toEqual([])
    valueIn(workshop.commission.undo())
    expect(stagesDone(state().facts).has(stageId)).toBe(true)
    expect(state().computed!.numbers.sides.thicknessMm).toBe(2.3)
    expect(named('radiusRim')).toEqual(before)
    expect(workshop.commission.redo().ok).toBe(true)
    expect(stagesDone(state().facts).has(stageId)).toBe(false)
  })

  it('what was said of work before it was done again counts no more', () => {
    keep('radiusRim')
    valueIn(workshop.commission.addFacts(redoToPlan(stageOf('radiusRim'), '', state().facts)))
    change('rim.depthAtTailMm', 112)
    sign('radiusRim')
    expect(named('radiusRim')).toEqual([])
    // What is asked is once more what was asked when the former work was let stand.
    change('rim.depthAtTailMm', 109)
    expect(named('radiusRim').length).toBeGreaterThan(3)
  })
})
