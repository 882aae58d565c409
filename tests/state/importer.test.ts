import { describe, expect, it } from 'vitest'
import { stagesDone } from '../../src/record/facts.ts'
import { replayLog } from '../../src/record/log.ts'
import { inOrder } from '../../src/record/order.ts'
import { readDocument } from '../../src/storage/documents.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk, until } from '../storage/fixture.ts'
import { openTab, type Tab } from './fixture.ts'

const TAIL = 'plan.rim.depthAtTailMm'

/** A commission signed off at its first stage, saved to a file, then taken further: another depth, and the sign-off withdrawn. */
async function savedThenTakenFurther(): Promise<{ tab: Tab; id: string; text: string; firstStage: string }> {
  const tab = await openTab(freshDisk())
  const { commission, list } = tab.workshop
  const id = valueIn(await list.create(STEEL_BEGINNING))
  await commission.open(id)
  const [firstStage = '', secondStage = ''] = inOrder(commission.store.getState().record?.doc.stages ?? {}).map(
    ([one]) => one,
  )
  valueIn(commission.markStageDone(firstStage, { 'body.lengthMm': 496 }))
  const text = (await tab.workshop.fileOf(id)) ?? ''
  valueIn(commission.change(TAIL, 99, tab.workshop.newGesture()))
  valueIn(commission.withdrawStage(firstStage))
  valueIn(commission.markStageDone(secondStage, {}))
  await tab.workshop.flush()
  await until(() => list.store.getState().heads.length === 1)
  return { tab, id, text, firstStage }
}

const stored = async (tab: Tab, id: string) => valueIn(await readDocument(tab.database, 'commission', id))

describe('opening a file', () => {
  it('elsewhere gives the same commission, log and facts', async () => {
    const { text, id, firstStage } = await savedThenTakenFurther()
    const elsewhere = await openTab(freshDisk(), { series: '9' })
    expect(await elsewhere.workshop.importer.openText(text)).toEqual({ kind: 'opened', id })
    const { row, changes, facts } = await stored(elsewhere, id)
    expect(row.doc.plan.rim.depthAtTailMm).toBe(106)
    expect([...stagesDone(facts).keys()]).toEqual([firstStage])
    expect(replayLog(changes, facts)).toEqual(row)
    expect(JSON.parse((await elsewhere.workshop.fileOf(id)) ?? '')).toEqual({
      ...JSON.parse(text),
      savedAt: expect.any(String),
    })
  })

  it('that is no commission changes nothing, and says why', async () => {
    const { tab } = await savedThenTakenFurther()
    const before = await tab.database.dexie.changes.toArray()
    expect(await tab.workshop.importer.openText('{"format"')).toMatchObject({
      kind: 'refused',
      problem: { code: 'unreadable' },
    })
    expect(await tab.workshop.importer.openText('[]')).toMatchObject({ kind: 'refused', problem: { code: 'notOurs' } })
    const big = { size: 50_000_000, text: () => Promise.reject(new Error('was read')) } as unknown as Blob
    expect(await tab.workshop.importer.openFile(big)).toMatchObject({ kind: 'refused', problem: { code: 'tooLarge' } })
    expect(await tab.database.dexie.changes.toArray()).toEqual(before)
  })

  it('of one that is here asks, and can keep both', async () => {
    const { tab, id, text } = await savedThenTakenFurther()
    const before = await stored(tab, id)
    expect(await tab.workshop.importer.openText(text)).toMatchObject({ kind: 'clash', here: { id } })
    expect(await stored(tab, id)).toEqual(before)
    const answer = await tab.workshop.importer.keepBoth()
    if (answer.kind !== 'opened') throw new Error(answer.kind)
    expect(answer.id).not.toBe(id)
    expect((await stored(tab, answer.id)).row.doc).toMatchObject({
      number: '26-008',
      plan: { rim: { depthAtTailMm: 106 } },
    })
    expect(await stored(tab, id)).toEqual(before)
  })

  it.each(['open here', 'closed'])(
    'of one that is %s can replace it, facts too, and be taken back as one',
    async (how) => {
      const { tab, id, text, firstStage } = await savedThenTakenFurther()
      if (how === 'closed') await tab.workshop.commission.close()
      const before = await stored(tab, id)
      await tab.workshop.importer.openText(text)
      expect(await tab.workshop.importer.replace()).toEqual({ kind: 'opened', id })
      await tab.workshop.flush()
      const replaced = await stored(tab, id)
      expect(replaced.row.doc).toEqual({ ...before.row.doc, plan: STEEL_BEGINNING.plan })
      expect([...stagesDone(replaced.facts).keys()]).toEqual([firstStage])
      expect(replayLog(replaced.changes, replaced.facts)).toEqual(replaced.row)
      valueIn(await tab.workshop.list.undo())
      await tab.workshop.flush()
      const back = await stored(tab, id)
      expect(back.row.doc).toEqual(before.row.doc)
      expect([...stagesDone(back.facts).keys()]).toEqual([...stagesDone(before.facts).keys()])
      expect(replayLog(back.changes, back.facts)).toEqual(back.row)
    },
  )

  it('of a deleted one brings it back', async () => {
    const { tab, id, text } = await savedThenTakenFurther()
    await tab.workshop.commission.close()
    valueIn(await tab.workshop.list.remove(id))
    await tab.workshop.importer.openText(text)
    await tab.workshop.importer.replace()
    expect((await stored(tab, id)).row.deletedAt).toBeNull()
  })
})
