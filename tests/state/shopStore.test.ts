import { describe, expect, it } from 'vitest'
import { setShopTolerance } from '../../src/record/changes/tolerances.ts'
import { valueIn } from '../record/fixture.ts'
import { freshDisk, until } from '../storage/fixture.ts'
import { openTab, type Tab } from './fixture.ts'

const state = ({ workshop }: Tab) => workshop.shop.store.getState()

describe('the shop', () => {
  it('is there before anything is stored, and stored only once something is changed', async () => {
    const disk = freshDisk()
    const tab = await openTab(disk)
    expect(state(tab)).toMatchObject({ status: 'ready', save: 'saved', shop: { origin: 'tail', paperSize: 'A4' } })
    await tab.workshop.flush()
    expect(await tab.database.dexie.documents.count()).toBe(0)
    valueIn(tab.workshop.shop.change('units.bodyLength', 'fractionalInch', tab.workshop.newGesture()))
    await until(() => state(tab).save === 'saved')
    expect(state(await openTab(disk)).shop.units.bodyLength).toBe('fractionalInch')
  })

  it('refuses a unit nobody has, and undoes like a commission', async () => {
    const tab = await openTab(freshDisk())
    expect(tab.workshop.shop.change('units.bodyLength', 'cubit', tab.workshop.newGesture())).toMatchObject({
      ok: false,
      problem: { field: 'units.bodyLength' },
    })
    valueIn(tab.workshop.shop.edit(setShopTolerance('body.lengthMm', 2)))
    expect(state(tab).shop.tolerances).toEqual({ 'body.lengthMm': 2 })
    valueIn(tab.workshop.shop.undo())
    expect(state(tab).shop.tolerances).toEqual({})
    valueIn(tab.workshop.shop.redo())
    expect(state(tab).shop.tolerances).toEqual({ 'body.lengthMm': 2 })
    await tab.workshop.flush()
  })

  it('changed in two tabs, begun in both, keeps both changes', async () => {
    const disk = freshDisk()
    const [one, other] = [await openTab(disk), await openTab(disk, { series: '9' })]
    valueIn(one.workshop.shop.change('name', 'Weir Lane Workshop', one.workshop.newGesture()))
    valueIn(other.workshop.shop.change('paperSize', 'Letter', other.workshop.newGesture()))
    await one.workshop.flush()
    await other.workshop.flush()
    await until(() => state(one).shop.paperSize === 'Letter')
    for (const tab of [one, other])
      expect(state(tab).shop).toMatchObject({ name: 'Weir Lane Workshop', paperSize: 'Letter' })
  })

  it('that cannot be read is reported, used as at the start, and left as it is', async () => {
    const disk = freshDisk()
    const tab = await openTab(disk)
    valueIn(tab.workshop.shop.change('name', 'Weir Lane Workshop', tab.workshop.newGesture()))
    await tab.workshop.flush()
    const [row] = (await tab.database.dexie.documents.toArray()) as [object]
    await tab.database.dexie.documents.put({ ...row, schemaVersion: 9 })
    const again = await openTab(disk)
    expect(state(again)).toMatchObject({ status: 'refused', problem: { code: 'tooNew' }, shop: { name: '' } })
    expect(again.workshop.shop.change('name', 'Other', again.workshop.newGesture())).toMatchObject({ ok: false })
  })
})

describe('persistence', () => {
  it('is asked for at the first save, and its answer kept', async () => {
    const disk = freshDisk()
    const tab = await openTab(disk)
    const answer = ({ workshop }: Tab) => workshop.persistence.store.getState().answer
    expect(answer(tab)).toBeNull()
    valueIn(tab.workshop.shop.change('name', 'Weir Lane Workshop', tab.workshop.newGesture()))
    await tab.workshop.flush()
    await until(() => answer(tab) === 'kept')
    await until(() => tab.workshop.persistence.store.getState().answer === 'kept')
    await new Promise((done) => setTimeout(done, 20))
    expect(answer(await openTab(disk))).toBe('kept')
  })
})
