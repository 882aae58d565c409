import { describe, expect, it } from 'vitest'
import { freshDisk } from '../storage/fixture.ts'
import { openTab } from './fixture.ts'

describe('a draft', () => {
  it('is back as typed after the tab has gone, at most 150 ms old, and only once', async () => {
    const disk = freshDisk()
    const { drafts } = (await openTab(disk)).workshop
    for (const text of ['9', '98', '98 3/x']) drafts.keep('doc', 'plan.rim.depthAtTailMm', text)
    drafts.keep('doc', 'brief.notes', '  half a wo')
    expect(drafts.textOf('doc', 'plan.rim.depthAtTailMm')).toBe('98 3/x')
    await new Promise((done) => setTimeout(done, 150))
    const again = (await openTab(disk)).workshop.drafts
    expect(again.textOf('doc', 'plan.rim.depthAtTailMm')).toBe('98 3/x')
    expect(again.textOf('doc', 'brief.notes')).toBe('  half a wo')
    again.clear('doc', 'brief.notes')
    await again.flush()
    const third = (await openTab(disk)).workshop.drafts
    expect(third.textOf('doc', 'brief.notes')).toBeNull()
    expect(third.textOf('other', 'plan.rim.depthAtTailMm')).toBeNull()
  })

  it('that cannot be written stays in memory and is written later', async () => {
    const disk = freshDisk()
    const { workshop, database } = await openTab(disk)
    const refuse = (): never => {
      throw Object.assign(new Error('full'), { name: 'QuotaExceededError' })
    }
    database.dexie.drafts.hook('creating', refuse)
    workshop.drafts.keep('doc', 'title', 'Half')
    await workshop.drafts.flush()
    expect(workshop.drafts.unsaved()).toMatchObject([{ text: 'Half' }])
    database.dexie.drafts.hook('creating').unsubscribe(refuse)
    workshop.drafts.keep('doc', 'title', 'Half a')
    await workshop.drafts.flush()
    expect((await openTab(disk)).workshop.drafts.textOf('doc', 'title')).toBe('Half a')
  })

  it('that is damaged is passed over and left where it is', async () => {
    const disk = freshDisk()
    const { database } = await openTab(disk)
    await database.dexie.drafts.put({ docId: 'doc', field: 'title', text: 7 })
    expect((await openTab(disk)).workshop.drafts.textOf('doc', 'title')).toBeNull()
    expect(await database.dexie.drafts.count()).toBe(1)
  })
})
