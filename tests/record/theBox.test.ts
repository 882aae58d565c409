import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { type NumberKey, readNumbers } from '../../src/core/numbers.ts'
import { bundleOfFile, readCommissionFile } from '../../src/record/door.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { countedIds, DEVICE, metaWith, valueIn } from './fixture.ts'

// oxlint-disable-next-line typescript/no-explicit-any -- an older shape, known here alone
type Json = Record<string, any>
const frozen = (): Json =>
  JSON.parse(readFileSync(new URL('../records/v3-commission.json', import.meta.url), 'utf8')) as Json
const then = JSON.parse(readFileSync(new URL('../tables/versionThreeNumbers.json', import.meta.url), 'utf8')) as {
  readonly numbers: Readonly<Record<string, readonly (number | string)[]>>
}

/** Was told where the channel of the rod ends before the bolt, and no longer is. */
const MENDED: ReadonlySet<string> = new Set(['neck.rodToBoltMm'])

describe('a record of version 3', () => {
  const file = valueIn(readCommissionFile(frozen()))
  const { numbers, findings } = compute(file.plan)

  it.each(Object.entries(then.numbers).filter(([key]) => !MENDED.has(key)))('gives %s as it did', (key, values) => {
    const now = readNumbers(numbers, key as NumberKey)
    expect(now).toHaveLength(values.length)
    values.forEach((value, i) => {
      if (typeof value === 'number') expect(Math.abs(Number(now[i]) - value)).toBeLessThan(1e-9)
      else expect(now[i]).toBe(value)
    })
  })

  it('gets no brace that its maker did not place, and nothing that does not fit', () => {
    expect(file.plan.bracing.braces).toEqual({})
    expect(file.modelAsTaken?.plan.bracing.braces).toEqual({})
    expect(findings.filter(({ weight }) => weight === 'cannot')).toEqual([])
  })

  it.each(['steelString', 'nylonString', 'small'])('is taken in as a %s', (family) => {
    const other = frozen()
    other['family'] = family
    const { plan } = valueIn(readCommissionFile(other))
    expect(plan.bridge.plateTailWidthMm).toBeGreaterThanOrEqual(plan.bridge.plateNeckWidthMm)
    expect(plan.air.heardHz).toBeNull()
  })

  it.each(['bridge', 'plan'])('widens what was set whole and takes it back: %s', (path) => {
    const old = frozen()
    const whole = path === 'plan' ? old['plan'] : old['plan'].bridge
    const before = path === 'plan' ? { ...whole, plates: { topMm: 2.5, backMm: 2.4 } } : { ...whole, widthMm: 30 }
    old['changes'].push({
      id: 'eeeeeeee-0000-4000-8000-000000001001',
      docId: old['id'],
      deviceId: DEVICE,
      seq: 1001,
      at: '2026-11-24T10:00:00.000Z',
      gesture: 'bbbbbbbb-0000-4000-8000-000000000001',
      path: path === 'plan' ? ['doc', 'plan'] : ['doc', 'plan', 'bridge'],
      value: whole,
      previous: before,
      after: null,
      undoes: null,
    })
    const { row, changes, facts } = bundleOfFile(valueIn(readCommissionFile(old)))
    const { undo } = undoable(changes, facts)
    const back = valueIn(takeBack(row, changes, facts, undo?.gesture ?? '', metaWith(countedIds('f'))))
    expect(back.row.doc.plan.bracing).toEqual(row.doc.plan.bracing)
    expect(back.row.doc.plan.bridge.plateTailWidthMm).toBe(row.doc.plan.bridge.plateTailWidthMm)
    expect(back.row.doc.plan).not.toEqual(row.doc.plan)
  })

  it('that never was one is refused, not mended', () => {
    const broken = frozen()
    broken['plan'].bridge = 7
    const answer = readCommissionFile(broken)
    if (answer.ok) throw new Error('was taken')
    expect(answer.problem.field).toBe('plan.bridge')
  })
})
