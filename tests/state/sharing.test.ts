import { afterEach, describe, expect, it } from 'vitest'
import { recordReading } from '../../src/record/bench/measured.ts'
import { pressClock, sayHours, workOf } from '../../src/record/bench/work.ts'
import type { Fact } from '../../src/record/commission.ts'
import { signOff, stagesDone } from '../../src/record/facts.ts'
import { inOrder } from '../../src/record/order.ts'
import { undoable } from '../../src/record/undo.ts'
import { readDocument } from '../../src/storage/documents.ts'
import { STEEL_BEGINNING, valueIn } from '../record/fixture.ts'
import { freshDisk } from '../storage/fixture.ts'
import { fillDisk, openTab, sharedLocks, type Tab } from './fixture.ts'

const tabs: Tab[] = []
afterEach(() => {
  for (const { workshop } of tabs.splice(0)) workshop.stop()
})

/** A tab with three instruments, the first of them on the bench. */
async function bench(disk = freshDisk(), locks = sharedLocks()) {
  const tab = await openTab(disk, { locks })
  tabs.push(tab)
  const { workshop, database } = tab
  const ids: string[] = []
  for (const number of ['26-1', '26-2', '26-3'])
    ids.push(valueIn(await workshop.list.create({ ...STEEL_BEGINNING, number })))
  await workshop.commission.open(ids[0]!)
  const sharing = await workshop.openSharing()
  const factsOf = async (id: string): Promise<readonly Fact[]> => {
    await workshop.flush()
    return valueIn(await readDocument(database, 'commission', id)).facts
  }
  return { tab, workshop, database, ids, sharing, factsOf, disk, locks }
}

const firstStage = (doc: { readonly stages: Parameters<typeof inOrder>[0] }): string => inOrder(doc.stages)[0]![0]

describe('work that several instruments share', () => {
  it('is written to each with how many they were: the shares add up to what was said', async () => {
    const { ids, sharing, factsOf, workshop } = await bench()
    const answer = await sharing.shareFacts(ids, ({ row }, meta) => [
      sayHours(row, { stageId: firstStage(row.doc), hours: 3, on: '2026-03-13', sharedBy: 3 }, meta),
    ])
    expect(answer.ok).toBe(true)
    const shares: number[] = []
    for (const id of ids) for (const [, { hours }] of workOf(await factsOf(id))) shares.push(hours)
    expect(shares).toEqual([1, 1, 1])
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(3, 12)
    // On the bench it stands at once, and each instrument can take its own share back.
    expect(workOf(workshop.commission.store.getState().facts).size).toBe(1)
    expect(undoable([], await factsOf(ids[1]!)).undo?.fields).toEqual(['facts'])
  })

  it('a clock is started and stopped on each', async () => {
    const { ids, sharing, factsOf } = await bench()
    for (const act of ['start', 'stop'] as const)
      valueIn(
        await sharing.shareFacts(ids.slice(0, 2), ({ row }, meta) => [
          pressClock(row, { stageId: firstStage(row.doc), act, sharedBy: 2 }, meta),
        ]),
      )
    const [mine, theirs] = [workOf(await factsOf(ids[0]!)), workOf(await factsOf(ids[1]!))]
    const [one] = [...mine.values()]
    const [other] = [...theirs.values()]
    expect(one!.running).toBeNull()
    expect(other!.entries[0]!.sharedBy).toBe(2)
    expect((await factsOf(ids[2]!)).length).toBe(0)
  })

  it('each is signed off with its own numbers, as they were built', async () => {
    const { ids, sharing, factsOf, workshop } = await bench()
    await workshop.commission.close()
    await workshop.commission.open(ids[1]!)
    workshop.commission.change('plan.rim.depthAtTailMm', 111, workshop.newGesture())
    await workshop.commission.close()
    await workshop.commission.open(ids[0]!)
    const plans = await Promise.all(ids.map((id) => sharing.read(id)))
    const asked = plans.map((one) => valueIn(one).row.doc.plan.rim.depthAtTailMm)
    valueIn(
      await sharing.shareFacts(ids, ({ row, computed }, meta) => [
        signOff(row, firstStage(row.doc), { depth: computed().depthMm }, meta),
      ]),
    )
    const kept = await Promise.all(ids.map(factsOf))
    expect(kept.map((facts) => [...stagesDone(facts).values()][0]?.builtTo)).toEqual(asked.map((depth) => ({ depth })))
    expect(asked[1]).toBe(111)
    expect(asked[0]).not.toBe(111)
  })

  it('one that another tab writes to keeps it from all, and is named', async () => {
    const { ids, sharing, factsOf, disk, locks } = await bench()
    const other = await openTab(disk, { locks, series: 'e' })
    tabs.push(other)
    await other.workshop.commission.open(ids[2]!)
    const answer = await sharing.shareFacts(ids, ({ row }, meta) => [
      sayHours(row, { stageId: firstStage(row.doc), hours: 3, on: '2026-03-13', sharedBy: 3 }, meta),
    ])
    expect(answer).toEqual({ ok: false, problem: { id: ids[2], problem: { code: 'openInAnotherTab' } } })
    for (const id of ids) expect(await factsOf(id)).toEqual([])
  })

  it('a fact that is none, an instrument that is gone and a full disk keep it from all', async () => {
    const { ids, sharing, factsOf, database } = await bench()
    const share = (hours: number, on: readonly string[]) =>
      sharing.shareFacts(on, ({ row }, meta) => [
        sayHours(
          row,
          { stageId: firstStage(row.doc), hours: row.doc.number === '26-2' ? hours : 1, on: '2026-03-13', sharedBy: 2 },
          meta,
        ),
      ])
    expect((await share(Number.NaN, ids)).ok).toBe(false)
    expect(await share(1, [...ids, '0f0f0f0f-0000-4000-8000-000000000001'])).toMatchObject({
      ok: false,
      problem: { problem: { code: 'missing' } },
    })
    const makeRoom = fillDisk(database)
    expect((await share(1, ids)).ok).toBe(false)
    makeRoom()
    for (const id of ids) expect(await factsOf(id)).toEqual([])
  })

  it('what is measured on one counts for that one', async () => {
    const { ids, sharing, factsOf } = await bench()
    valueIn(
      await sharing.shareFacts([ids[1]!], ({ row }, meta) => [
        recordReading(
          row,
          {
            stageId: null,
            number: 'rim[].depthMm',
            row: 0,
            side: 'whole',
            value: 77,
            alongMm: null,
            entry: null,
            typed: '77',
            gauge: '',
            planned: 'none',
            replaces: null,
          },
          meta,
        ),
      ]),
    )
    const seen: string[] = []
    valueIn(
      await sharing.shareFacts(ids, ({ facts, computed }) => {
        seen.push(`${facts.length} ${computed().depthMm > 0}`)
        return []
      }),
    )
    expect(seen.toSorted()).toEqual(['0 true', '0 true', '1 true'])
    expect((await factsOf(ids[1]!)).length).toBe(1)
  })
})
