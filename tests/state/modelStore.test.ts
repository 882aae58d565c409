import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { goByModel } from '../../src/record/changes/model.ts'
import { replayLog } from '../../src/record/log.ts'
import { startingModels } from '../../src/state/modelStore.ts'
import { readDocument } from '../../src/storage/documents.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk, until } from '../storage/fixture.ts'
import { fillDisk, openTab, type Tab } from './fixture.ts'

const state = ({ workshop }: Tab) => workshop.models.store.getState()
const modelOf = (tab: Tab, id: string) => state(tab).models.find((one) => one.id === id)
const heads = ({ workshop }: Tab) => workshop.list.store.getState().heads
const { plan } = STEEL_STRING

async function tabWithOne() {
  const tab = await openTab(freshDisk())
  const { models } = tab.workshop
  const id = valueIn(await models.create({ name: 'Heron', family: 'steelString', plan }))
  await until(() => modelOf(tab, id) !== undefined)
  return { tab, id, models }
}

describe('the models of the house', () => {
  it('gain what is created, under a log of its own, and can take that back', async () => {
    const { tab, id, models } = await tabWithOne()
    expect(modelOf(tab, id)).toMatchObject({ name: 'Heron', family: 'steelString', demo: false, deletedAt: null })
    expect(state(tab).lastAction).toEqual({ kind: 'created', id, label: 'Heron' })
    const { row, changes } = valueIn(await readDocument(tab.database, 'model', id))
    expect(replayLog(changes)).toEqual(row)
    valueIn(await models.undo())
    await until(() => modelOf(tab, id)?.deletedAt !== null)
    expect(startingModels(state(tab))).toEqual([])
  })

  it('runs what belongs to it when a creation is taken back', async () => {
    const { tab, models } = await tabWithOne()
    let ran = 0
    valueIn(await models.create({ name: 'Egret', family: 'small', plan }, () => (ran += 1)))
    await until(() => state(tab).models.length === 2)
    valueIn(await models.undo())
    expect(ran).toBe(1)
  })

  it('are renamed, given a plan, removed and brought back, each with one press back', async () => {
    const { tab, id, models } = await tabWithOne()
    valueIn(await models.rename(id, 'Grey heron'))
    await until(() => modelOf(tab, id)?.name === 'Grey heron')
    valueIn(await models.undo())
    await until(() => modelOf(tab, id)?.name === 'Heron')

    const deeper = { ...plan, rim: { ...plan.rim, depthAtTailMm: 112 } }
    valueIn(await models.give(id, deeper))
    await until(() => modelOf(tab, id)?.plan.rim.depthAtTailMm === 112)
    valueIn(await models.undo())
    await until(() => modelOf(tab, id)?.plan.rim.depthAtTailMm === plan.rim.depthAtTailMm)

    valueIn(await models.remove(id))
    await until(() => modelOf(tab, id)?.deletedAt !== null)
    valueIn(await models.restore(id))
    await until(() => modelOf(tab, id)?.deletedAt === null)
    valueIn(await models.undo())
    await until(() => modelOf(tab, id)?.deletedAt !== null)
    expect(valueIn(await readDocument(tab.database, 'model', id)).changes).toHaveLength(8)
  })

  it('are seen by every tab', async () => {
    const disk = freshDisk()
    const [one, other] = [await openTab(disk), await openTab(disk, { series: '9' })]
    const id = valueIn(await one.workshop.models.create({ name: 'Heron', family: 'steelString', plan }))
    await until(() => modelOf(other, id) !== undefined)
    valueIn(await other.workshop.models.rename(id, 'Grey heron'))
    await until(() => modelOf(one, id)?.name === 'Grey heron')
    expect(state(one).models).toEqual(state(other).models)
  })

  it('say what could not be done, and stay as they are', async () => {
    const { tab, id, models } = await tabWithOne()
    const makeRoom = fillDisk(tab.database)
    expect(await models.rename(id, 'Grey heron')).toEqual({ ok: false, problem: { code: 'diskFull' } })
    expect(state(tab).problem).toEqual({ code: 'diskFull' })
    makeRoom()
    expect(modelOf(tab, id)?.name).toBe('Heron')
    expect(await models.give(id, { ...plan, plates: { topMm: 90, backMm: 2 } })).toMatchObject({
      ok: false,
      problem: { field: 'plan.plates.topMm' },
    })
  })

  it('that cannot be read are named, and left as they are', async () => {
    const { tab, id } = await tabWithOne()
    const row = (await tab.database.dexie.documents.get(id)) as object
    await tab.database.dexie.documents.put({ ...row, schemaVersion: 99 })
    await until(() => state(tab).unreadable.length === 1)
    expect(state(tab)).toMatchObject({ models: [], unreadable: [{ id, problem: { code: 'tooNew' } }] })
    expect(await tab.database.dexie.documents.get(id)).toMatchObject({ schemaVersion: 99 })
  })

  it('count the instruments that go by them; deleted ones do not count', async () => {
    const { tab, id, models } = await tabWithOne()
    const { list, commission } = tab.workshop
    const model = { modelId: id, name: 'Heron', plan }
    const first = valueIn(await list.create({ ...STEEL_BEGINNING, model }))
    const second = valueIn(await list.create({ ...STEEL_BEGINNING, number: '26-008' }))
    expect((await models.countUses()).get(id)).toBe(1)
    await commission.open(second)
    valueIn(commission.edit(goByModel(model)))
    await tab.workshop.flush()
    expect((await models.countUses()).get(id)).toBe(2)
    valueIn(await list.remove(first))
    expect((await models.countUses()).get(id)).toBe(1)
  })
})

describe('the models that come with the program', () => {
  it('are there to begin from until one of the same id is stored, also where that was removed', async () => {
    const tab = await openTab(freshDisk())
    const { models } = tab.workshop
    await models.fetchPacked()
    const offered = startingModels(state(tab))
    expect(offered.map(({ family }) => family)).toEqual(['steelString', 'nylonString', 'small'])
    expect(offered.every(({ isStored }) => !isStored)).toBe(true)
    const [first] = offered
    if (first === undefined) throw new Error('none')
    valueIn(await models.keepPacked(first))
    valueIn(await models.keepPacked(first))
    await until(() => modelOf(tab, first.id) !== undefined)
    expect(await tab.database.dexie.changes.count()).toBe(1)
    expect(startingModels(state(tab)).map(({ id, isStored }) => [id, isStored])).toEqual(
      offered.map(({ id }) => [id, id === first.id]),
    )
    expect(modelOf(tab, first.id)?.demo).toBe(true)
    valueIn(await models.rename(first.id, 'Ours'))
    await until(() => modelOf(tab, first.id)?.demo === false)
    valueIn(await models.remove(first.id))
    await until(() => startingModels(state(tab)).length === offered.length - 1)
    valueIn(await models.keepPacked(first))
    expect(startingModels(state(tab)).some(({ id }) => id === first.id)).toBe(false)
  })
})

describe('the demo and its models', () => {
  /** The frozen commission, begun from a model of the house by its id. */
  const file = (modelId: string | null) => {
    const parsed = JSON.parse(readFileSync(new URL('../records/v1-commission.json', import.meta.url), 'utf8'))
    return { ...parsed, modelAsTaken: parsed.modelAsTaken === null ? null : { ...parsed.modelAsTaken, modelId } }
  }

  async function demoBench() {
    const tab = await openTab(freshDisk())
    valueIn(await tab.workshop.demo.install([file(STEEL_STRING.id)]))
    await until(() => heads(tab).length === 1 && state(tab).models.length === 1)
    return { tab, id: heads(tab)[0]?.id ?? '', list: tab.workshop.list }
  }

  it('come together, those its instruments were begun from, and go together', async () => {
    const { tab, list } = await demoBench()
    expect(state(tab).models).toMatchObject([{ id: STEEL_STRING.id, demo: true }])
    valueIn(await list.removeDemo())
    await until(() => heads(tab).length === 0 && state(tab).models.length === 0)
    expect(list.store.getState().lastAction).toMatchObject({ kind: 'demoRemoved', staying: 0 })
    valueIn(await list.undo())
    await until(() => heads(tab).length === 1 && state(tab).models.length === 1)
  })

  it('leave behind a model that an instrument of the maker’s own goes by', async () => {
    const { tab, list } = await demoBench()
    const own = valueIn(await list.create({ ...STEEL_BEGINNING, number: 'own' }))
    valueIn(await list.removeDemo())
    await until(() => heads(tab).length === 1)
    expect(heads(tab)[0]?.id).toBe(own)
    expect(modelOf(tab, STEEL_STRING.id)).toBeDefined()
  })

  it('leave behind an instrument the maker has written to, as the maker’s own, and take that back', async () => {
    const { tab, id, list } = await demoBench()
    await tab.workshop.commission.open(id)
    valueIn(tab.workshop.commission.change('plan.rim.depthAtTailMm', 99, tab.workshop.newGesture()))
    valueIn(await list.removeDemo())
    await until(() => heads(tab)[0]?.demo === false)
    expect(list.store.getState().lastAction).toMatchObject({ kind: 'demoRemoved', staying: 1 })
    expect(modelOf(tab, STEEL_STRING.id)).toBeDefined()
    const { row } = valueIn(await readDocument(tab.database, 'commission', id))
    expect(row.doc.plan.rim.depthAtTailMm).toBe(99)
    valueIn(await list.undo())
    await until(() => heads(tab)[0]?.demo === true)
  })

  it('takes putting away and deleting for no writing, and signing off for some', async () => {
    const away = await demoBench()
    valueIn(await away.list.archive(away.id))
    valueIn(await away.list.remove(away.id))
    valueIn(await away.list.removeDemo())
    await until(() => heads(away.tab).length === 0)
    const signed = await demoBench()
    const { commission } = signed.tab.workshop
    await commission.open(signed.id)
    const [stage = ''] = Object.keys(commission.store.getState().record?.doc.stages ?? {})
    valueIn(commission.markStageDone(stage, {}))
    valueIn(await signed.list.removeDemo())
    await until(() => heads(signed.tab)[0]?.demo === false)
    expect(heads(signed.tab)[0]?.stagesDone).toBe(2)
  })

  it('settled into a shop with tolerances of its own is still as it came', async () => {
    const tab = await openTab(freshDisk())
    valueIn(tab.workshop.shop.change('tolerances', { 'sides.depthAtNeckMm': 3 }, tab.workshop.newGesture()))
    await tab.workshop.flush()
    valueIn(await tab.workshop.demo.install([file(null)]))
    await until(() => heads(tab).length === 1)
    const { row, changes } = valueIn(await readDocument(tab.database, 'commission', heads(tab)[0]?.id ?? ''))
    expect(row.doc.tolerances['sides.depthAtNeckMm']).toBeNull()
    expect(changes.length).toBeGreaterThan(file(null).changes.length)
    valueIn(await tab.workshop.list.removeDemo())
    await until(() => heads(tab).length === 0)
  })
})
