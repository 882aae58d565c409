import { describe, expect, it } from 'vitest'
import { archive } from '../../src/record/changes/life.ts'
import { stagesDone } from '../../src/record/facts.ts'
import { replayLog } from '../../src/record/log.ts'
import { inOrder } from '../../src/record/order.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk, until } from '../storage/fixture.ts'
import { fillDisk, openTab, sharedLocks, type Tab } from './fixture.ts'

const TAIL = 'plan.rim.depthAtTailMm'
const state = ({ workshop }: Tab) => workshop.commission.store.getState()
const tailMm = (tab: Tab) => state(tab).record?.doc.plan.rim.depthAtTailMm

async function openedTab(disk = freshDisk(), locks = sharedLocks()): Promise<{ tab: Tab; id: string }> {
  const tab = await openTab(disk, { locks })
  const id = valueIn(await tab.workshop.list.create(STEEL_BEGINNING))
  await tab.workshop.commission.open(id)
  return { tab, id }
}

describe('an open commission', () => {
  it('follows every stroke at once, numbers included, and writes a run of them in one transaction', async () => {
    const { tab } = await openedTab()
    const gesture = tab.workshop.newGesture()
    for (const depth of [107, 108, 109]) {
      valueIn(tab.workshop.commission.change(TAIL, depth, gesture))
      expect(tailMm(tab)).toBe(depth)
      expect(state(tab).computed).toEqual({ depthMm: depth })
      expect(state(tab).save).toBe('saving')
    }
    expect(await tab.database.dexie.changes.count()).toBe(1)
    await until(() => state(tab).save === 'saved')
    expect(await tab.database.dexie.changes.count()).toBe(2)
    expect(replayLog(state(tab).changes, state(tab).facts)).toEqual(state(tab).record)
  })

  it('computes only where the plan moved', async () => {
    const { tab } = await openedTab()
    const before = tab.computed()
    valueIn(tab.workshop.commission.change('brief.client', 'Someone else', tab.workshop.newGesture()))
    expect(tab.computed()).toBe(before)
  })

  it('refuses what may not stand, and keeps what stood', async () => {
    const { tab } = await openedTab()
    expect(tab.workshop.commission.change(TAIL, 5000, tab.workshop.newGesture())).toMatchObject({
      ok: false,
      problem: { field: TAIL },
    })
    expect(tailMm(tab)).toBe(106)
    expect(state(tab).save).toBe('saved')
  })

  it('undoes and redoes a visit to a field as one, also after a reload', async () => {
    const disk = freshDisk()
    const { tab, id } = await openedTab(disk)
    const gesture = tab.workshop.newGesture()
    valueIn(tab.workshop.commission.change(TAIL, 107, gesture))
    await tab.workshop.flush()
    valueIn(tab.workshop.commission.change(TAIL, 108, gesture))
    await tab.workshop.commission.close()
    const again = await openTab(disk, { series: '9' })
    await again.workshop.commission.open(id)
    expect(state(again)).toMatchObject({ undo: { fields: [TAIL] }, redo: null })
    valueIn(again.workshop.commission.undo())
    expect(tailMm(again)).toBe(106)
    await again.workshop.commission.close()
    await again.workshop.commission.open(id)
    expect(state(again)).toMatchObject({ undo: null, redo: { fields: [TAIL] } })
    valueIn(again.workshop.commission.redo())
    expect(tailMm(again)).toBe(108)
    valueIn(again.workshop.commission.undo())
    expect(tailMm(again)).toBe(106)
    expect(replayLog(state(again).changes, state(again).facts)).toEqual(state(again).record)
  })

  it('begins a new gesture when a field is gone on with after an undo', async () => {
    const { tab } = await openedTab()
    const gesture = tab.workshop.newGesture()
    valueIn(tab.workshop.commission.change(TAIL, 107, gesture))
    valueIn(tab.workshop.commission.undo())
    valueIn(tab.workshop.commission.change(TAIL, 108, gesture))
    valueIn(tab.workshop.commission.change(TAIL, 109, gesture))
    valueIn(tab.workshop.commission.undo())
    expect(tailMm(tab)).toBe(106)
    expect(state(tab).undo).toBeNull()
  })

  it('signs a stage off with its numbers, takes that back, and tells the list', async () => {
    const { tab, id } = await openedTab()
    const [stageId = ''] = inOrder(state(tab).record?.doc.stages ?? {}).map(([one]) => one)
    valueIn(tab.workshop.commission.markStageDone(stageId, { 'body.lengthMm': 496, 'back.radiusMm': 'flat' }))
    await tab.workshop.flush()
    const head = () => tab.workshop.list.store.getState().heads.find((one) => one.id === id)
    await until(() => head()?.nextStage === 'glueBlocks')
    expect(stagesDone(state(tab).facts).get(stageId)?.builtTo).toEqual({
      'body.lengthMm': 496,
      'back.radiusMm': 'flat',
    })
    valueIn(tab.workshop.commission.withdrawStage(stageId))
    expect(stagesDone(state(tab).facts).size).toBe(0)
    valueIn(tab.workshop.commission.undo())
    expect(stagesDone(state(tab).facts).size).toBe(1)
    expect(tab.workshop.commission.markStageDone(stageId, { 'body.lengthMm': Number.NaN })).toMatchObject({ ok: false })
    await until(() => state(tab).save === 'saved')
  })

  it('that is not there, or cannot be read, says why and leaves it as it is', async () => {
    const { tab, id } = await openedTab()
    await tab.workshop.commission.open(tab.workshop.newGesture())
    expect(state(tab)).toMatchObject({ status: 'refused', problem: { code: 'missing' } })
    const stored = { ...((await tab.database.dexie.documents.get(id)) as object), schemaVersion: 7 }
    await tab.database.dexie.documents.put(stored)
    await tab.workshop.commission.open(id)
    expect(state(tab)).toMatchObject({ status: 'refused', problem: { code: 'tooNew' } })
    expect(tab.workshop.commission.change(TAIL, 100, tab.workshop.newGesture())).toMatchObject({ ok: false })
    expect(await tab.database.dexie.documents.get(id)).toEqual(stored)
  })
})

describe('a full disk', () => {
  it('keeps the edit in memory, says so, and writes it when there is room, by itself or when told', async () => {
    const { tab, id } = await openedTab()
    const makeRoom = fillDisk(tab.database)
    valueIn(tab.workshop.commission.change(TAIL, 107, tab.workshop.newGesture()))
    await until(() => state(tab).save === 'unsaved')
    expect(state(tab).saveProblem).toEqual({ code: 'diskFull' })
    expect(tailMm(tab)).toBe(107)
    expect(tab.workshop.commission.unsaved()).toHaveLength(1)
    expect(await tab.workshop.collectEverything()).toContain('107')
    makeRoom()
    await tab.workshop.commission.flush()
    expect(state(tab)).toMatchObject({ save: 'saved', saveProblem: null })
    const refill = fillDisk(tab.database)
    valueIn(tab.workshop.commission.change(TAIL, 108, tab.workshop.newGesture()))
    await until(() => state(tab).save === 'unsaved')
    refill()
    valueIn(tab.workshop.commission.change(TAIL, 109, tab.workshop.newGesture()))
    await until(() => state(tab).save === 'saved')
    await tab.workshop.commission.open(id)
    expect(tailMm(tab)).toBe(109)
    expect(replayLog(state(tab).changes, state(tab).facts)).toEqual(state(tab).record)
  })

  it('does not lose the edit when the commission is left and opened again', async () => {
    const { tab, id } = await openedTab()
    const makeRoom = fillDisk(tab.database)
    valueIn(tab.workshop.commission.change(TAIL, 107, tab.workshop.newGesture()))
    await tab.workshop.commission.close()
    expect(tab.workshop.commission.unsaved()).toHaveLength(1)
    await tab.workshop.commission.open(id)
    expect(tailMm(tab)).toBe(107)
    expect(state(tab).save).toBe('unsaved')
    makeRoom()
    await tab.workshop.flush()
    expect(state(tab).save).toBe('saved')
    expect(tab.workshop.commission.unsaved()).toHaveLength(0)
  })
})

describe('two tabs', () => {
  it('have one writer; the other follows live, may not write, and takes over when the first lets go', async () => {
    const [disk, locks] = [freshDisk(), sharedLocks()]
    const { tab, id } = await openedTab(disk, locks)
    const other = await openTab(disk, { locks, series: '9' })
    await other.workshop.commission.open(id)
    await until(() => state(other).status === 'open')
    expect(state(other).readOnly).toBe('openInAnotherTab')
    expect(other.workshop.commission.change(TAIL, 100, other.workshop.newGesture())).toEqual({
      ok: false,
      problem: { code: 'readOnly' },
    })
    valueIn(tab.workshop.commission.change(TAIL, 107, tab.workshop.newGesture()))
    await until(() => tailMm(other) === 107)
    expect(state(other).computed).toEqual({ depthMm: 107 })
    await tab.workshop.commission.close()
    await until(() => state(other).readOnly === null)
    valueIn(other.workshop.commission.change(TAIL, 108, other.workshop.newGesture()))
    await until(() => state(other).save === 'saved')
    expect(replayLog(state(other).changes, state(other).facts)).toEqual(state(other).record)
  })

  it('without locks both write, and neither loses an edit', async () => {
    const disk = freshDisk()
    const one = await openTab(disk, { locks: undefined })
    const id = valueIn(await one.workshop.list.create(STEEL_BEGINNING))
    const other = await openTab(disk, { locks: undefined, series: '9' })
    for (const tab of [one, other]) await tab.workshop.commission.open(id)
    valueIn(one.workshop.commission.change(TAIL, 107, one.workshop.newGesture()))
    await one.workshop.flush()
    valueIn(other.workshop.commission.change('plan.rim.depthAtNeckMm', 91, other.workshop.newGesture()))
    await other.workshop.flush()
    expect(state(other)).toMatchObject({ save: 'saved', saveProblem: null })
    expect(state(other).record?.doc.plan.rim).toMatchObject({ depthAtTailMm: 107, depthAtNeckMm: 91 })
    expect(replayLog(state(other).changes, state(other).facts)).toEqual(state(other).record)
  })

  it('opened and left in haste leave no lock behind', async () => {
    const [disk, locks] = [freshDisk(), sharedLocks()]
    const { tab, id } = await openedTab(disk, locks)
    await Promise.all([
      tab.workshop.commission.open(id),
      tab.workshop.commission.open(id),
      tab.workshop.commission.close(),
    ])
    await tab.workshop.commission.close()
    const other = await openTab(disk, { locks, series: '9' })
    await other.workshop.commission.open(id)
    expect(state(other)).toMatchObject({ status: 'open', readOnly: null })
    valueIn(other.workshop.commission.edit(archive('2026-05-01')))
    expect(state(other).undo).toBeNull()
    await other.workshop.flush()
  })
})
