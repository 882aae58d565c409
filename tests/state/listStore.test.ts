import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readDocument } from '../../src/storage/documents.ts'
import { searchHeads } from '../../src/state/searchHeads.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk, until } from '../storage/fixture.ts'
import { fillDisk, openTab, sharedLocks, type Tab } from './fixture.ts'

const heads = ({ workshop }: Tab) => workshop.list.store.getState().heads
const headOf = (tab: Tab, id: string) => heads(tab).find((one) => one.id === id)
const lastAction = ({ workshop }: Tab) => workshop.list.store.getState().lastAction

async function tabWithOne() {
  const tab = await openTab(freshDisk())
  const id = valueIn(await tab.workshop.list.create(STEEL_BEGINNING))
  await until(() => headOf(tab, id) !== undefined)
  return { tab, id, list: tab.workshop.list }
}

describe('the list', () => {
  it('gains what is created, and can take that back', async () => {
    const { tab, id, list } = await tabWithOne()
    expect(headOf(tab, id)).toMatchObject({ number: '26-007', client: 'Odile Varnham', nextStage: 'bendSides' })
    expect(lastAction(tab)).toEqual({ kind: 'created', ids: [id], label: '26-007 Meadow fourteen-fret' })
    valueIn(await list.undo())
    await until(() => headOf(tab, id)?.deletedAt !== null)
    expect(lastAction(tab)).toBeNull()
  })

  it('duplicates under the next free number', async () => {
    const { tab, id, list } = await tabWithOne()
    const copy = valueIn(await list.duplicate(id))
    await until(() => headOf(tab, copy) !== undefined)
    expect(headOf(tab, copy)).toMatchObject({
      number: '26-008',
      title: 'Meadow fourteen-fret',
      promisedOn: null,
      stagesDone: 0,
    })
    const named = valueIn(await list.duplicate(id, { number: 'X', title: 'Twin' }))
    await until(() => headOf(tab, named)?.title === 'Twin')
  })

  it('duplicates an instrument as it was built: what was read is the plan of the next, which has no facts', async () => {
    const { tab, id, list } = await tabWithOne()
    const { commission } = tab.workshop
    await commission.open(id)
    const { plan } = commission.store.getState().record!.doc
    valueIn(
      commission.addReading({
        stageId: null,
        number: 'sides.thicknessMm',
        row: 0,
        side: 'whole',
        value: 2.45,
        alongMm: null,
        entry: null,
        typed: '2.45',
        gauge: '',
        planned: plan.rim.sideThicknessMm,
        replaces: null,
      }),
    )
    await commission.flush()
    const planOf = async (copy: string) => valueIn(await readDocument(tab.database, 'commission', copy))
    const built = await planOf(valueIn(await list.duplicate(id, { plan: 'asBuilt' })))
    expect(built.row.doc.plan).toEqual({ ...plan, rim: { ...plan.rim, sideThicknessMm: 2.45 } })
    expect([built.facts, built.changes.length]).toEqual([[], 1])
    expect((await planOf(valueIn(await list.duplicate(id)))).row.doc.plan).toEqual(plan)
  })

  it.each(['archive', 'remove'] as const)('takes %s back with one press, whatever came first', async (what) => {
    const { tab, id, list } = await tabWithOne()
    valueIn(await list[what](id))
    const isGone = () => headOf(tab, id)?.archivedOn !== null || headOf(tab, id)?.deletedAt !== null
    await until(isGone)
    valueIn(await list.undo())
    await until(() => !isGone())
    valueIn(await list[what](id))
    await until(isGone)
    valueIn(await (what === 'archive' ? list.unarchive(id) : list.restore(id)))
    await until(() => !isGone())
    expect(valueIn(await readDocument(tab.database, 'commission', id)).changes).toHaveLength(5)
  })

  it('works on the commission that is open here, and asks for patience with one open elsewhere', async () => {
    const [disk, locks] = [freshDisk(), sharedLocks()]
    const tab = await openTab(disk, { locks })
    const id = valueIn(await tab.workshop.list.create(STEEL_BEGINNING))
    await tab.workshop.commission.open(id)
    valueIn(tab.workshop.commission.change('title', 'In hand', tab.workshop.newGesture()))
    valueIn(await tab.workshop.list.archive(id))
    await until(() => headOf(tab, id)?.title === 'In hand' && headOf(tab, id)?.archivedOn !== null)
    const other = await openTab(disk, { locks, series: '9' })
    expect(await other.workshop.list.remove(id)).toEqual({ ok: false, problem: { code: 'openInAnotherTab' } })
    expect(other.workshop.list.store.getState().problem).toEqual({ code: 'openInAnotherTab' })
  })

  it('says what it could not do, and changes nothing', async () => {
    const { tab, id, list } = await tabWithOne()
    const makeRoom = fillDisk(tab.database)
    expect(await list.archive(id)).toEqual({ ok: false, problem: { code: 'diskFull' } })
    expect(lastAction(tab)?.kind).toBe('created')
    makeRoom()
    expect(headOf(tab, id)?.archivedOn).toBeNull()
  })

  it('is searched by the words of number, client and title, without regard to capitals and accents', async () => {
    const { tab } = await tabWithOne()
    for (const query of ['', 'varnham', 'ODILE 007', 'méadow', ' fourteen  26 '])
      expect(searchHeads(heads(tab), query)).toHaveLength(1)
    for (const query of ['varnham nylon', '008']) expect(searchHeads(heads(tab), query)).toHaveLength(0)
  })
})

describe('the demo', () => {
  const file = (): unknown =>
    JSON.parse(readFileSync(new URL('../records/v1-commission.json', import.meta.url), 'utf8'))

  it('is taken in once, marked as such, and goes in one step that can be taken back', async () => {
    const { tab, id, list } = await tabWithOne()
    expect(await tab.workshop.demo.isUnanswered()).toBe(true)
    valueIn(await tab.workshop.demo.install([file()]))
    valueIn(await tab.workshop.demo.install([file()]))
    await until(() => heads(tab).length === 2)
    expect(await tab.workshop.demo.isUnanswered()).toBe(false)
    const demo = heads(tab).find((one) => one.demo)?.id ?? ''
    await tab.workshop.commission.open(demo)
    valueIn(await list.removeDemo())
    await until(() => heads(tab).length === 1)
    expect(heads(tab)[0]?.id).toBe(id)
    expect(tab.workshop.commission.store.getState().status).toBe('closed')
    valueIn(await list.undo())
    await until(() => heads(tab).length === 2)
  })

  it('with one damaged file is not taken in at all', async () => {
    const { tab } = await tabWithOne()
    expect(await tab.workshop.demo.install([file(), {}])).toMatchObject({ ok: false, problem: { code: 'notOurs' } })
    expect(await tab.database.dexie.documents.count()).toBe(1)
  })
})
