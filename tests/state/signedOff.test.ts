import { beforeAll, describe, expect, it } from 'vitest'
import type { Computed } from '../../src/core/compute.ts'
import { compute } from '../../src/core/compute.ts'
import { buildLoaded, loadAsBuilt, loadEngine, prepareReadings, roundLoaded } from '../../src/app/engine.ts'
import { stagesDone } from '../../src/record/facts.ts'
import { inOrder } from '../../src/record/order.ts'
import { createSignedOffs, type SignedOffs } from '../../src/state/signedOff.ts'
import { openWorkshop, type Workshop } from '../../src/state/workshop.ts'
import { countedIds, STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { databaseOn, freshDisk } from '../storage/fixture.ts'

let workshop: Workshop<Computed>
let stageIds: string[]
let signedOffs: SignedOffs<Computed>
beforeAll(async () => {
  await Promise.all([loadEngine(), loadAsBuilt()])
  workshop = await openWorkshop({
    build: buildLoaded,
    prepareReadings,
    roundOf: roundLoaded,
    startingTolerance: () => null,
    onNotice: () => undefined,
    database: databaseOn(freshDisk()),
    locks: undefined,
    newId: countedIds('7'),
    requestPersistence: async () => 'kept',
  })
  await workshop.commission.open(valueIn(await workshop.list.create(STEEL_BEGINNING)))
  signedOffs = createSignedOffs(buildLoaded, state)
  stageIds = inOrder(state().record!.doc.stages).map(([id]) => id)
})
const state = () => workshop.commission.store.getState()
const doneAt = (stageId: string) => stagesDone(state().facts).get(stageId)!
const change = (field: string, value: unknown) =>
  valueIn(workshop.commission.change(field, value, workshop.newGesture()))

describe('what a signed stage was built to', () => {
  it('is the plan of then, with the readings of then, under the numbers it kept', () => {
    const { commission } = workshop
    const { plan } = state().record!.doc
    valueIn(
      commission.addReading({
        stageId: stageIds[0]!,
        number: 'sides.thicknessMm',
        row: 0,
        side: 'whole',
        value: 2.4,
        alongMm: null,
        entry: null,
        typed: '2.4',
        gauge: '',
        planned: 2.2,
        replaces: null,
      }),
    )
    valueIn(commission.markStageDone(stageIds[0]!, { 'rim[2].depthMm': 88, 'sides.thicknessMm': 2.4 }))
    change('plan.rim.depthAtTailMm', 90)
    change('plan.rim.stationStepMm', 8)
    valueIn(commission.markStageDone(stageIds[1]!, {}))
    const then = signedOffs.builtAt(doneAt(stageIds[0]!).id)!
    const worked = compute({ ...plan, rim: { ...plan.rim, sideThicknessMm: 2.4 } }).numbers
    expect(then.plan.rim).toEqual({ ...plan.rim, sideThicknessMm: 2.4 })
    expect(then.computed.numbers.rim[2]?.depthMm).toBe(88)
    expect(then.computed.numbers.rim[3]).toEqual(worked.rim[3])
    expect(then.computed.numbers.rim.length).toBe(worked.rim.length)
    expect(state().computed!.numbers.rim.length).not.toBe(worked.rim.length)
    expect(signedOffs.builtAt(doneAt(stageIds[1]!).id)!.plan.rim.depthAtTailMm).toBe(90)
  })

  it('is worked out once, and is nothing where nothing was signed off', () => {
    const { id } = doneAt(stageIds[0]!)
    const then = signedOffs.builtAt(id)
    change('plan.rim.depthAtTailMm', 95)
    expect(signedOffs.builtAt(id)).toBe(then)
    expect(signedOffs.builtAt('no such fact')).toBeNull()
    expect(signedOffs.signedOff(id)).toBe(then!.signed)
  })

  it('is as planned today, as far as its rows go, where the log does not tell', () => {
    const { record, facts, changes } = state()
    const cut = createSignedOffs(buildLoaded, () => ({ record, facts, changes: changes.slice(1) }))
    const then = cut.builtAt(doneAt(stageIds[0]!).id)!
    expect(then.signed.isTold).toBe(false)
    expect(then.plan.rim.depthAtTailMm).toBe(95)
    expect(then.computed.numbers.rim[2]?.depthMm).toBe(88)
  })
})
