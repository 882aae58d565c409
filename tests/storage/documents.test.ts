import { describe, expect, it } from 'vitest'
import { setField } from '../../src/record/changes/setField.ts'
import { type CommissionRecord, SCHEMA_VERSION } from '../../src/record/commission.ts'
import { type Bundle, seenIn } from '../../src/record/document.ts'
import { signOff } from '../../src/record/facts.ts'
import type { Migration } from '../../src/record/migrations/migrate.ts'
import type { Database } from '../../src/storage/database.ts'
import { putBack, removeDemo } from '../../src/storage/demo.ts'
import { ownDeviceId, readDeviceValue, writeDeviceValue } from '../../src/storage/deviceValues.ts'
import { readDocument, saveDocument, watchDocument } from '../../src/storage/documents.ts'
import { mendHeads, readHeads } from '../../src/storage/heads.ts'
import { collectEverything } from '../../src/storage/rescue.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from '../record/fixture.ts'
import { databaseOn, freshDisk, until } from './fixture.ts'

const save = (database: Database, { row, changes, facts }: Bundle) =>
  saveDocument(database, { row, changes, facts, allFacts: facts })

describe('a stored document', () => {
  it('comes back as it was, log and all, from another connection', async () => {
    const disk = freshDisk()
    const newId = countedIds()
    const bundle = edited(beginSteel(newId), setField('plan.rim.depthAtTailMm', 110), metaWith(newId))
    expect(await save(databaseOn(disk), bundle)).toEqual({ ok: true, value: null })
    expect(await readDocument(databaseOn(disk), 'commission', bundle.row.id)).toEqual({ ok: true, value: bundle })
  })

  it('is written whole or not at all', async () => {
    const database = databaseOn(freshDisk())
    const newId = countedIds()
    const bundle = beginSteel(newId)
    valueIn(await save(database, bundle))
    const next = edited(bundle, setField('title', 'Another'), metaWith(newId))
    database.dexie.heads.hook('creating', () => {
      throw new Error('no')
    })
    database.dexie.heads.hook('updating', () => {
      throw new Error('no')
    })
    expect(
      await saveDocument(database, { row: next.row, changes: next.changes.slice(1), facts: [], allFacts: [] }),
    ).toMatchObject({ ok: false })
    expect(valueIn(await readDocument(database, 'commission', bundle.row.id))).toEqual(bundle)
  })

  it('does not come back to life when it was taken away meanwhile', async () => {
    const database = databaseOn(freshDisk())
    const newId = countedIds()
    const next = edited(beginSteel(newId), setField('title', 'Another'), metaWith(newId))
    const answer = await saveDocument(database, {
      row: next.row,
      changes: next.changes.slice(1),
      facts: [],
      allFacts: [],
    })
    expect(answer).toEqual({ ok: false, problem: { code: 'gone' } })
    expect(await database.dexie.changes.count()).toBe(0)
  })

  it('is not written over what another tab has entered in the same place', async () => {
    const database = databaseOn(freshDisk())
    const newId = countedIds()
    const bundle = beginSteel(newId)
    valueIn(await save(database, bundle))
    const write = ({ row, changes }: Bundle) =>
      saveDocument(database, { row, changes: changes.slice(1), facts: [], allFacts: [] })
    const mine = edited(bundle, setField('title', 'Mine'), metaWith(newId))
    expect(await write(edited(bundle, setField('title', 'Theirs'), metaWith(newId)))).toMatchObject({ ok: true })
    expect(await write(mine)).toEqual({ ok: false, problem: { code: 'changedElsewhere' } })
    expect(valueIn(await readDocument(database, 'commission', bundle.row.id)).row.doc.title).toBe('Theirs')
  })

  it('is not written over a fact another tab has entered in the same place', async () => {
    const database = databaseOn(freshDisk())
    const newId = countedIds()
    const bundle = beginSteel(newId)
    valueIn(await save(database, bundle))
    const mine = edited(bundle, setField('title', 'Mine'), metaWith(newId))
    const fact = signOff(bundle.row, newId(), {}, metaWith(newId))
    const row = { ...bundle.row, seen: seenIn([fact], bundle.row.seen) }
    valueIn(await saveDocument(database, { row, changes: [], facts: [fact], allFacts: [fact] }))
    const write = { row: mine.row, changes: mine.changes.slice(1), facts: [], allFacts: [] }
    expect(await saveDocument(database, write)).toEqual({ ok: false, problem: { code: 'changedElsewhere' } })
  })

  it('may be written twice with the same entries, as after a lost connection', async () => {
    const database = databaseOn(freshDisk())
    const newId = countedIds()
    const bundle = beginSteel(newId)
    valueIn(await save(database, bundle))
    const next = edited(bundle, setField('title', 'Another'), metaWith(newId))
    const write = { row: next.row, changes: next.changes.slice(1), facts: [], allFacts: [] }
    expect(await saveDocument(database, write)).toMatchObject({ ok: true })
    expect(await saveDocument(database, write)).toMatchObject({ ok: true })
    expect(await database.dexie.changes.count()).toBe(2)
  })

  it('tells other connections of every write', async () => {
    const disk = freshDisk()
    const [one, other] = [databaseOn(disk), databaseOn(disk)]
    const newId = countedIds()
    const bundle = beginSteel(newId)
    valueIn(await save(one, bundle))
    const titles: string[] = []
    const stop = watchDocument(other, 'commission', bundle.row.id, (read) => {
      if (read.ok) titles.push(read.value.row.doc.title)
    })
    await until(() => titles.length === 1)
    const next = edited(bundle, setField('title', 'Another'), metaWith(newId))
    valueIn(await saveDocument(one, { row: next.row, changes: next.changes.slice(1), facts: [], allFacts: [] }))
    await until(() => titles.length > 1)
    expect(titles.at(-1)).toBe('Another')
    stop()
  })

  it('of an older shape is set aside as it was and written back in the new one', async () => {
    const database = databaseOn(freshDisk())
    const bundle = beginSteel(countedIds())
    const older = { ...bundle.row, schemaVersion: SCHEMA_VERSION - 1 }
    await database.dexie.documents.put(older)
    await database.dexie.changes.bulkPut([...bundle.changes])
    const step: Migration = {
      to: SCHEMA_VERSION,
      name: 'nothingMoves',
      row: (row) => row,
      change: (change) => change,
      fact: (fact) => fact,
    }
    expect(valueIn(await readDocument(database, 'commission', bundle.row.id, [step])).row).toEqual(bundle.row)
    expect(await database.dexie.documents.get(bundle.row.id)).toEqual(bundle.row)
    expect(await database.dexie.setAside.toArray()).toEqual([{ row: older, changes: bundle.changes, facts: [] }])
  })

  it('too new or damaged is refused, and left as it is', async () => {
    const database = databaseOn(freshDisk())
    const { row } = beginSteel(countedIds())
    for (const stored of [
      { ...row, schemaVersion: 9 },
      { ...row, doc: { ...row.doc, plan: null } },
    ]) {
      await database.dexie.documents.put(stored)
      expect(await readDocument(database, 'commission', row.id)).toMatchObject({ ok: false })
      expect(await database.dexie.documents.get(row.id)).toEqual(stored)
    }
  })
})

describe('the list', () => {
  it('has a head for each commission, and names those that cannot be read', async () => {
    const database = databaseOn(freshDisk())
    const [sound, headless] = [beginSteel(countedIds('a')), beginSteel(countedIds('b'))]
    for (const bundle of [sound, headless]) valueIn(await save(database, bundle))
    await database.dexie.heads.delete(headless.row.id)
    const damaged = { ...sound.row, id: countedIds('c')(), doc: 'gone' }
    await database.dexie.documents.put(damaged)
    await database.dexie.heads.put({ id: damaged.id, number: 7 })
    const list = await readHeads(database)
    expect(list.heads.map((head) => head.id).toSorted()).toEqual([sound.row.id, headless.row.id].toSorted())
    expect(list.unreadable).toMatchObject([{ id: damaged.id, problem: { code: 'wrongField', field: 'doc' } }])
    valueIn(await mendHeads(database))
    expect((await database.dexie.heads.toCollection().primaryKeys()).toSorted()).toEqual(
      [sound.row.id, headless.row.id].toSorted(),
    )
    expect(await database.dexie.documents.get(damaged.id)).toEqual(damaged)
  })

  it('loses the whole demo in one step, and nothing else; all can be put back', async () => {
    const database = databaseOn(freshDisk())
    const own = beginSteel(countedIds('a'))
    const demo = edited(beginSteel(countedIds('b')), ({ doc }) => void (doc.demo = true), metaWith(countedIds('c')))
    for (const bundle of [own, demo]) valueIn(await save(database, bundle))
    await database.dexie.drafts.put({ docId: demo.row.id, field: 'title', text: 'x', at: '2026-03-14T09:26:53.000Z' })
    const counts = () =>
      Promise.all(['documents', 'changes', 'heads', 'drafts'].map((name) => database.dexie.table(name).count()))
    const before = await counts()
    const removed = valueIn(await removeDemo(database))
    expect(await counts()).toEqual([1, 1, 1, 0])
    expect(valueIn(await readDocument(database, 'commission', own.row.id))).toEqual(own)
    valueIn(await putBack(database, removed))
    expect(await counts()).toEqual(before)
    expect(valueIn(await readDocument(database, 'commission', demo.row.id))).toEqual(demo)
  })
})

describe('this device', () => {
  it('keeps one id for all its tabs', async () => {
    const disk = freshDisk()
    const ids = await Promise.all(['a', 'b'].map((series) => ownDeviceId(databaseOn(disk), countedIds(series))))
    expect(ids[0]).toBe(ids[1])
    expect(await ownDeviceId(databaseOn(disk), countedIds('c'))).toBe(ids[0])
  })

  it('keeps values, and reads none that are damaged', async () => {
    const database = databaseOn(freshDisk())
    expect(await readDeviceValue(database, 'persistence')).toBeNull()
    valueIn(await writeDeviceValue(database, 'persistence', 'kept'))
    expect(await readDeviceValue(database, 'persistence')).toBe('kept')
    await database.dexie.device.put({ key: 'persistence', value: 7 })
    expect(await readDeviceValue(database, 'persistence')).toBeNull()
  })
})

describe('the rescue file', () => {
  it('holds every row as it is, and what was in memory', async () => {
    const database = databaseOn(freshDisk())
    const bundle = beginSteel(countedIds())
    valueIn(await save(database, bundle))
    await database.dexie.documents.put({ id: 'odd', anything: true })
    const text = await collectEverything(database, '2026-03-14T09:26:53.000Z', { held: 1 })
    const rescued = JSON.parse(text) as { documents: CommissionRecord[]; changes: unknown[]; unsaved: unknown }
    expect(rescued.documents).toContainEqual(bundle.row)
    expect(rescued.documents).toContainEqual({ id: 'odd', anything: true })
    expect(rescued.changes).toEqual(bundle.changes)
    expect(rescued.unsaved).toEqual({ held: 1 })
  })

  it('is made even where nothing can be read', async () => {
    const database = databaseOn(freshDisk())
    await database.dexie.open()
    database.dexie.close()
    database.dexie.open = () => Promise.reject(new Error('no')) as never
    expect(JSON.parse(await collectEverything(database, '', { held: 1 }))).toMatchObject({
      unsaved: { held: 1 },
      documents: { notRead: expect.any(String) },
    })
  })
})
