import Dexie from 'dexie'
import { IDBKeyRange } from 'fake-indexeddb'
import { describe, expect, it } from 'vitest'
import { addMinutes, beginTimer, endTimer, type Timer } from '../../src/record/timer.ts'
import { watchAnyTimer } from '../../src/storage/anyTimer.ts'
import { collectEverything } from '../../src/storage/rescue.ts'
import { changeTimer, claimNotice, putTimer, readTimers } from '../../src/storage/timers.ts'
import { countedIds } from '../record/fixture.ts'
import { databaseOn, freshDisk, nameOn, until } from './fixture.ts'

const newId = countedIds('a')
const DOC = newId()
const NINE = '2026-11-27T09:00:00.000Z'
const TEN = '2026-11-27T10:00:00.000Z'
const timer = (label: string, seconds = 600, now = NINE): Timer =>
  beginTimer(newId(), { docId: DOC, stageId: null, number: '26-07', label, seconds }, now)

describe('stored timers', () => {
  it('that cannot be read are passed over, left where they are, and leave with the rescue file', async () => {
    const database = databaseOn(freshDisk())
    const odd = { id: 'odd', endsAt: 'soon', endedAt: '2001-01-01T00:00:00.000Z' }
    await database.dexie.timers.put(odd)
    const braces = timer('braces')
    await putTimer(database, braces, NINE)
    expect(await readTimers(database)).toEqual([braces])
    expect(await changeTimer(database, 'odd', (one) => one)).toEqual({ ok: true, value: null })
    expect(await claimNotice(database, 'odd', () => TEN)).toEqual({ ok: true, value: false })
    expect(await database.dexie.timers.get('odd')).toEqual(odd)
    expect(JSON.parse(await collectEverything(database, ''))).toMatchObject({ timers: [braces, odd] })
  })

  it('long ended are taken out when the next one is stored; those of the last month stay', async () => {
    const database = databaseOn(freshDisk())
    for (const day of ['2026-10-27T10:00:00.000Z', '2026-10-29T10:00:00.000Z'])
      await putTimer(database, endTimer(timer(day, 60, day), day), day)
    await putTimer(database, timer('now'), NINE)
    const rows = (await database.dexie.timers.toArray()) as Timer[]
    expect(rows.map(({ label }) => label).toSorted()).toEqual(['2026-10-29T10:00:00.000Z', 'now'])
  })

  it('that another tab has ended stay ended, whatever this one kept in memory', async () => {
    const database = databaseOn(freshDisk())
    const braces = timer('braces')
    await putTimer(database, endTimer(braces, TEN), TEN)
    await putTimer(database, addMinutes(braces, 10, TEN), TEN)
    expect(await readTimers(database)).toEqual([])
  })

  it('are claimed for notice by one tab alone, and not before they ran out', async () => {
    const disk = freshDisk()
    const tabs = [databaseOn(disk), databaseOn(disk), databaseOn(disk)]
    const braces = timer('braces')
    await putTimer(tabs[0]!, braces, NINE)
    const claimAt = (moment: string) => Promise.all(tabs.map((tab) => claimNotice(tab, braces.id, () => moment)))
    expect((await claimAt('2026-11-27T09:09:59.999Z')).map((claim) => claim.ok && claim.value)).toEqual([
      false,
      false,
      false,
    ])
    expect((await claimAt(TEN)).filter((claim) => claim.ok && claim.value)).toHaveLength(1)
  })

  it('are told of from the first that is there until the last is ended', async () => {
    const disk = freshDisk()
    const [one, two] = [databaseOn(disk), databaseOn(disk)]
    const told: boolean[] = []
    const stop = watchAnyTimer(one, (isThere) => told.push(isThere))
    await until(() => told.length > 0)
    const braces = timer('braces')
    await putTimer(two, braces, NINE)
    await until(() => told.at(-1) === true)
    await putTimer(two, endTimer(braces, TEN), TEN)
    await until(() => told.at(-1) === false)
    stop()
    expect(told).toEqual([false, true, false])
  })
})

describe('a device from before there were timers', () => {
  it('keeps what it had and takes timers', async () => {
    const disk = freshDisk()
    const before = new Dexie(nameOn(disk), { indexedDB: disk, IDBKeyRange })
    before.version(1).stores({
      documents: 'id, kind',
      changes: 'id, docId, &[docId+deviceId+seq]',
      facts: 'id, docId, &[docId+deviceId+seq]',
      heads: 'id',
      drafts: '[docId+field], docId',
      device: 'key',
      setAside: '++',
    })
    await before.table('documents').put({ id: 'one', kind: 'odd' })
    before.close()
    const database = databaseOn(disk)
    expect(await putTimer(database, timer('braces'), NINE)).toMatchObject({ ok: true })
    expect(await database.dexie.documents.toArray()).toEqual([{ id: 'one', kind: 'odd' }])
    expect(await database.dexie.timers.count()).toBe(1)
  })
})
