import { describe, expect, it } from 'vitest'
import {
  commissionFileName,
  MOST_MEGABYTES,
  parseCommissionText,
  readCommissionBytes,
  writeCommissionFile,
} from '../../src/files/commissionFile.ts'
import { bundleOfFile, readCommissionFile } from '../../src/record/door.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { beginSteel, countedIds, valueIn } from '../record/fixture.ts'

const bundle = beginSteel(countedIds())
const text = writeCommissionFile(bundle, STARTING_SHOP, '2026-03-14T09:26:53.000Z')

describe('the commission file', () => {
  it('gives back what was put in, and has the planned values under plan', () => {
    const file = valueIn(readCommissionFile(valueIn(parseCommissionText(text))))
    expect(bundleOfFile(file)).toEqual(bundle)
    expect((JSON.parse(text) as { plan: unknown }).plan).toEqual(bundle.row.doc.plan)
    expect(file.shop).toEqual(STARTING_SHOP)
  })

  it('is the same text for the same record, in whatever order its keys came to be', () => {
    const turn = <T>(value: T): T =>
      typeof value !== 'object' || value === null || Array.isArray(value)
        ? value
        : (Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([key, inner]) => [key, turn(inner)]),
          ) as T)
    const turned = { ...bundle, row: turn(bundle.row) }
    expect(writeCommissionFile(turned, STARTING_SHOP, '2026-03-14T09:26:53.000Z')).toBe(text)
  })

  it('may begin with a byte order mark', () => {
    expect(parseCommissionText(`\uFEFF${text}`)).toEqual(parseCommissionText(text))
  })

  it('beyond its greatest size is not even read', async () => {
    const huge = {
      size: MOST_MEGABYTES * 1e6 + 1,
      text: () => Promise.reject(new Error('was read')),
    } as unknown as Blob
    expect(await readCommissionBytes(huge)).toMatchObject({ ok: false, problem: { code: 'tooLarge' } })
    expect(parseCommissionText(' '.repeat(MOST_MEGABYTES * 1e6 + 1))).toMatchObject({
      ok: false,
      problem: { code: 'tooLarge' },
    })
  })

  it('that cannot be read from the device is unreadable', async () => {
    const gone = { size: 10, text: () => Promise.reject(new Error('gone')) } as unknown as Blob
    expect(await readCommissionBytes(gone)).toMatchObject({ ok: false, problem: { code: 'unreadable' } })
    expect(await readCommissionBytes(new Blob([text]))).toEqual(parseCommissionText(text))
  })

  it.each([
    [{ number: '26-007', title: 'Meadow / fourteen' }, '26-007-Meadow-fourteen.ribwright.json'],
    [{ number: '../..', title: '' }, 'commission.ribwright.json'],
    [{ number: '7', title: 'Für Ödile' }, '7-Für-Ödile.ribwright.json'],
  ])('of %j is named %s', (doc, name) => {
    expect(commissionFileName(doc)).toBe(name)
  })
})
