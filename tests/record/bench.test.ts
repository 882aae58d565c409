import { describe, expect, it } from 'vitest'
import {
  measured,
  type NewReading,
  readingsInUse,
  recordReading,
  switchReading,
} from '../../src/record/bench/measured.ts'
import { pressClock, sayHours, workOf } from '../../src/record/bench/work.ts'
import type { Fact } from '../../src/record/commission.ts'
import { readFact } from '../../src/record/door.ts'
import { redoStage, signOff, stagesDone, withdraw } from '../../src/record/facts.ts'
import { beginSteel, countedIds, metaWith, valueIn } from './fixture.ts'

const newId = countedIds('b')
const { row } = beginSteel(newId)
const [stageId = ''] = Object.keys(row.doc.stages)
const meta = (at = '2026-03-14T09:00:00.000Z') => ({ ...metaWith(newId), at })
const READ: NewReading = {
  stageId,
  number: 'sides.thicknessMm',
  row: 0,
  side: 'bass',
  value: 2.31,
  alongMm: null,
  entry: null,
  typed: '2.31',
  gauge: 'thickness caliper',
  planned: 2.2,
  replaces: null,
}

describe('readings', () => {
  it('pass the door, and a figure that is none does not', () => {
    expect(readFact(recordReading(row, READ, meta())).ok).toBe(true)
    expect(readFact(recordReading(row, { ...READ, value: Number.NaN }, meta())).ok).toBe(false)
    expect(readFact({ ...recordReading(row, READ, meta()), number: 'sides.colour' }).ok).toBe(false)
  })
  it('a correction rules, and the first reading is kept', () => {
    const first = recordReading(row, READ, meta())
    const second = recordReading(row, { ...READ, value: 2.13, replaces: first.id }, meta())
    expect(readingsInUse([first, second]).map(({ value }) => value)).toEqual([2.13])
    expect(measured([first, second]).map(({ value, isLatest }) => [value, isLatest])).toEqual([
      [2.31, false],
      [2.13, true],
    ])
  })
  it('one that is turned off changes no number, until it is turned on again', () => {
    const read = recordReading(row, READ, meta())
    const off = switchReading(row, read.id, false, meta())
    expect(readingsInUse([read, off])).toEqual([])
    expect(readingsInUse([read, off, switchReading(row, read.id, true, meta())])).toHaveLength(1)
    expect(readingsInUse([read, off, withdraw(row, off.id, meta())])).toHaveLength(1)
    expect(readingsInUse([read, withdraw(row, read.id, meta())])).toEqual([])
  })
})

describe('hours', () => {
  const clock = (act: 'start' | 'stop', at: string, sharedBy = 1): Fact =>
    pressClock(row, { stageId, act, sharedBy }, meta(at))
  it('by the clock, in stretches, shared by the instruments worked on', () => {
    const work = workOf([
      clock('start', '2026-03-14T09:00:00.000Z'),
      clock('stop', '2026-03-14T10:30:00.000Z'),
      clock('start', '2026-03-14T13:00:00.000Z', 3),
      clock('start', '2026-03-14T13:10:00.000Z'),
      clock('stop', '2026-03-14T16:00:00.000Z'),
    ]).get(stageId)
    expect(work?.hours).toBeCloseTo(1.5 + 1, 12)
    expect(work?.entries.map(({ how, sharedBy }) => [how, sharedBy])).toEqual([
      ['clock', 1],
      ['clock', 3],
    ])
    expect(work?.running).toBeNull()
  })
  it('as said afterwards, and a clock that still runs', () => {
    const said = sayHours(row, { stageId, hours: 3, on: '2026-03-13', sharedBy: 2 }, meta())
    const work = workOf([said, clock('start', '2026-03-14T09:00:00.000Z')]).get(stageId)
    expect(work?.hours).toBe(1.5)
    expect(work?.running?.since).toBe('2026-03-14T09:00:00.000Z')
  })
  it('signing off stops the clock; a clock set back counts as nothing; a stop alone too', () => {
    const done = signOff(row, stageId, {}, meta('2026-03-14T11:00:00.000Z'))
    expect(workOf([clock('start', '2026-03-14T09:00:00.000Z'), done]).get(stageId)).toMatchObject({
      hours: 2,
      running: null,
    })
    expect(
      workOf([clock('start', '2026-03-14T09:00:00.000Z'), clock('stop', '2026-03-14T08:00:00.000Z')]).get(stageId)
        ?.hours,
    ).toBe(0)
    expect(workOf([clock('stop', '2026-03-14T08:00:00.000Z')]).size).toBe(0)
  })
})

describe('a stage done again', () => {
  it('goes back to the plan, and its sign-off stays on record', () => {
    const done = signOff(row, stageId, { 'sides.thicknessMm': 2.2 }, meta())
    const again = redoStage(row, stageId, 'cracked at the waist', meta())
    expect(stagesDone([done, again]).size).toBe(0)
    expect(stagesDone([done, again, signOff(row, stageId, {}, meta())]).size).toBe(1)
    expect(stagesDone([done, again, withdraw(row, again.id, meta())]).get(stageId)).toBe(done)
    expect(valueIn(readFact(again))).toEqual(again)
  })
})
