import { describe, expect, it } from 'vitest'
import type { NewReading } from '../../src/record/bench/measured.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk, until } from '../storage/fixture.ts'
import { fillDisk, openTab, sharedLocks, type Tab } from './fixture.ts'

const state = ({ workshop }: Tab) => workshop.commission.store.getState()
const TAIL_101: NewReading = {
  stageId: null,
  number: 'sides.depthAtTailMm',
  row: 0,
  side: 'whole',
  value: 101.4,
  alongMm: null,
  entry: null,
  typed: '101.4',
  gauge: 'rule',
  planned: 106,
  replaces: null,
}

async function openedTab(disk = freshDisk()): Promise<{ tab: Tab; id: string; disk: IDBFactory }> {
  const tab = await openTab(disk, { locks: sharedLocks() })
  const id = valueIn(await tab.workshop.list.create(STEEL_BEGINNING))
  await tab.workshop.commission.open(id)
  return { tab, id, disk }
}

describe('a reading in an open commission', () => {
  it('takes the planned value’s place in the numbers, not in the plan, and is written at once', async () => {
    const { tab, id, disk } = await openedTab()
    valueIn(tab.workshop.commission.addReading(TAIL_101))
    expect(state(tab).computed?.depthMm).toBeCloseTo(101.4, 9)
    expect(state(tab).builtDoc?.plan.rim.depthAtTailMm).toBeCloseTo(101.4, 9)
    expect(state(tab).record?.doc.plan.rim.depthAtTailMm).toBe(106)
    expect(state(tab).taken.map(({ field, planned }) => [field, planned])).toEqual([['rim.depthAtTailMm', 106]])
    expect(state(tab).save).toBe('saving')
    await until(() => state(tab).save === 'saved')
    expect(await tab.database.dexie.facts.count()).toBe(1)
    const again = await openTab(disk, { locks: sharedLocks(), series: 'e' })
    await again.workshop.commission.open(id)
    expect(state(again).computed?.depthMm).toBeCloseTo(101.4, 9)
  })

  it('stays over a change of the plan; turned off, withdrawn or undone the plan counts again', async () => {
    const { tab } = await openedTab()
    const { commission } = tab.workshop
    valueIn(commission.addReading(TAIL_101))
    valueIn(commission.change('plan.rim.depthAtTailMm', 110, tab.workshop.newGesture()))
    expect(state(tab).computed?.depthMm).toBeCloseTo(101.4, 9)
    valueIn(commission.undo())
    const [reading] = state(tab).facts
    valueIn(commission.switchReading(reading!.id, false))
    expect(state(tab).computed?.depthMm).toBe(106)
    expect(state(tab).builtDoc).toBe(state(tab).record?.doc)
    valueIn(commission.undo())
    expect(state(tab).computed?.depthMm).toBeCloseTo(101.4, 9)
    valueIn(commission.undo())
    expect(state(tab).computed?.depthMm).toBe(106)
    valueIn(commission.redo())
    expect(state(tab).computed?.depthMm).toBeCloseTo(101.4, 9)
  })

  it('works nothing out anew for a fact that is no reading', async () => {
    const { tab } = await openedTab()
    const before = tab.computed()
    const [stageId = ''] = Object.keys(state(tab).record?.doc.stages ?? {})
    valueIn(tab.workshop.commission.markStageDone(stageId, { 'body.lengthMm': 500 }))
    expect(tab.computed()).toBe(before)
  })

  it('is kept in memory where it cannot be written, and said', async () => {
    const { tab } = await openedTab()
    const mend = fillDisk(tab.database)
    valueIn(tab.workshop.commission.addReading(TAIL_101))
    await until(() => state(tab).save === 'unsaved')
    expect(state(tab).computed?.depthMm).toBeCloseTo(101.4, 9)
    mend()
    await tab.workshop.flush()
    expect(state(tab).save).toBe('saved')
  })

  it('refuses a figure that is none, and keeps what stood', async () => {
    const { tab } = await openedTab()
    expect(tab.workshop.commission.addReading({ ...TAIL_101, value: Number.NaN }).ok).toBe(false)
    expect(state(tab).facts).toEqual([])
  })
})
