import { describe, expect, it } from 'vitest'
import { allHours, hoursByPart, isSigned, NOTHING_DONE, stageStates } from '../../src/record/bench/stageStates.ts'
import { pressClock, sayHours } from '../../src/record/bench/work.ts'
import type { Fact } from '../../src/record/commission.ts'
import { redoStage, signOff, withdraw } from '../../src/record/facts.ts'
import { beginSteel, countedIds, metaWith } from './fixture.ts'

const newId = countedIds('c')
const { row } = beginSteel(newId)
const [first = '', second = ''] = Object.keys(row.doc.stages)
const meta = (at: string) => ({ ...metaWith(newId), at: `2026-03-14T${at}:00.000Z` })
const clock = (stageId: string, act: 'start' | 'stop', at: string, sharedBy = 1): Fact =>
  pressClock(row, { stageId, act, sharedBy }, meta(at))
const said = (stageId: string, hours: number, at: string, sharedBy = 1): Fact =>
  sayHours(row, { stageId, hours, on: '2026-03-13', sharedBy }, meta(at))
const wordOf = (facts: readonly Fact[], id = first): string => (stageStates(facts).get(id) ?? NOTHING_DONE).word

describe('where a stage stands', () => {
  it('to do, running, done, to be done again, and done again', () => {
    const facts: Fact[] = []
    const words = [wordOf(facts)]
    for (const fact of [
      clock(first, 'start', '09:00'),
      signOff(row, first, {}, meta('10:00')),
      redoStage(row, first, 'glue line open', meta('11:00')),
      clock(first, 'start', '11:10'),
      clock(first, 'stop', '11:40'),
      signOff(row, first, {}, meta('12:00')),
    ]) {
      facts.push(fact)
      words.push(wordOf(facts))
    }
    expect(words).toEqual(['toDo', 'running', 'done', 'again', 'running', 'again', 'done'])
    const { history, spentH, freshH, since } = stageStates(facts).get(first)!
    expect(history.map((one) => (one.kind === 'redo' ? one.reason : one.kind))).toEqual([
      'signed',
      'glue line open',
      'signed',
    ])
    expect(since).toBe('2026-03-14T12:00:00.000Z')
    // One hour before it was to be done again, half an hour since.
    expect(spentH).toBeCloseTo(1.5, 12)
    expect(freshH).toBeCloseTo(0.5, 12)
  })

  it('what was taken back was never said', () => {
    const done = signOff(row, first, {}, meta('10:00'))
    const redo = redoStage(row, first, 'again', meta('11:00'))
    expect(wordOf([done, redo, withdraw(row, redo.id, meta('12:00'))])).toBe('done')
    expect(wordOf([done, withdraw(row, done.id, meta('12:00'))])).toBe('toDo')
  })

  it('a clock that runs on a signed stage does not unsign it', () => {
    const state = stageStates([signOff(row, first, {}, meta('10:00')), clock(first, 'start', '11:00', 3)]).get(first)!
    expect([state.word, state.sharedBy, isSigned(state)]).toEqual(['running', 3, true])
  })
})

describe('hours', () => {
  const stages = [
    { id: first, handsH: { low: 1, likely: 2, high: 4 }, times: 3 },
    { id: second, handsH: { low: 1, likely: 5, high: 9 }, times: 1 },
  ]
  it('left are the likely ones of what is not signed off, less what was spent, and never less than none', () => {
    const facts = [said(first, 4, '09:00', 2), said(second, 7, '09:00')]
    const parts = hoursByPart(stages, stageStates(facts), (id) => (id === first ? 'rim' : 'top'))
    expect(parts).toEqual([
      { part: 'rim', spentH: 2, leftH: 4 },
      { part: 'top', spentH: 7, leftH: 0 },
    ])
    expect(allHours(parts)).toEqual({ spentH: 9, leftH: 4 })
  })
  it('of a signed stage none are left, of one to be done again all', () => {
    const facts: Fact[] = [said(second, 3, '09:00'), signOff(row, second, {}, meta('10:00'))]
    const leftOf = () => hoursByPart(stages, stageStates(facts), (id) => id).find(({ part }) => part === second)!.leftH
    expect(leftOf()).toBe(0)
    facts.push(redoStage(row, second, 'split', meta('11:00')))
    expect(leftOf()).toBe(5)
  })
})
