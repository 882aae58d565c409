import Dexie from 'dexie'
import { IDBKeyRange } from 'fake-indexeddb'
import { describe, expect, it } from 'vitest'
import { writeDurably } from '../../src/storage/writeDurably.ts'
import { databaseOn, freshDisk, nameOn, until } from './fixture.ts'

const faultNamed = (name: string, inner?: unknown): Error => Object.assign(new Error(name), { name, inner })

describe('a write', () => {
  it.each(['DatabaseClosedError', 'UnknownError', 'InvalidStateError'])(
    'that meets a %s is tried once more',
    async (name) => {
      const database = databaseOn(freshDisk())
      let tries = 0
      const answer = await writeDurably(database, [database.dexie.device], async () => {
        tries += 1
        if (tries === 1) throw faultNamed(name)
        await database.dexie.device.put({ key: 'k', value: tries })
        return tries
      })
      expect(answer).toEqual({ ok: true, value: 2 })
      expect(await database.dexie.device.count()).toBe(1)
    },
  )

  it('goes through where the browser has dropped the connection', async () => {
    const database = databaseOn(freshDisk())
    await database.dexie.open()
    database.dexie.close()
    const answer = await writeDurably(database, [database.dexie.device], () => database.dexie.device.put({ key: 'k' }))
    expect(answer.ok).toBe(true)
  })

  it('that fails twice says so, and leaves nothing behind', async () => {
    const database = databaseOn(freshDisk())
    let tries = 0
    const answer = await writeDurably(database, [database.dexie.device], async () => {
      tries += 1
      await database.dexie.device.put({ key: 'k' })
      throw faultNamed('UnknownError')
    })
    expect(tries).toBe(2)
    expect(answer).toEqual({ ok: false, problem: { code: 'failed', detail: 'UnknownError' } })
    expect(await database.dexie.device.count()).toBe(0)
  })

  it.each([
    ['as it is', faultNamed('QuotaExceededError')],
    ['inside an abort', faultNamed('AbortError', faultNamed('QuotaExceededError'))],
  ])('on a full disk, told %s, is not tried again and says so', async (_, fault) => {
    const database = databaseOn(freshDisk())
    let tries = 0
    const answer = await writeDurably(database, [database.dexie.device], () => {
      tries += 1
      return Promise.reject(fault)
    })
    expect(tries).toBe(1)
    expect(answer).toEqual({ ok: false, problem: { code: 'diskFull' } })
  })
})

describe('a newer version in another tab', () => {
  it('gets what waits flushed, the connection closed, and this tab told', async () => {
    const disk = freshDisk()
    const database = databaseOn(disk)
    await database.dexie.open()
    const seen: string[] = []
    database.beforeClosing(async () => {
      await database.dexie.device.put({ key: 'flushed' })
      seen.push('flushed')
    })
    database.onNotice((notice) => seen.push(notice))
    const newer = new Dexie(nameOn(disk), { indexedDB: disk, IDBKeyRange })
    newer.version(3).stores({ device: 'key', more: 'id' })
    await newer.open()
    await until(() => seen.length === 2)
    expect(seen).toEqual(['flushed', 'newVersionElsewhere'])
    expect(await newer.table('device').get('flushed')).toEqual({ key: 'flushed' })
    expect(
      await writeDurably(database, [database.dexie.device], () => database.dexie.device.put({ key: 'late' })),
    ).toEqual({
      ok: false,
      problem: { code: 'closing' },
    })
  })
})
