import { describe, expect, it } from 'vitest'
import type { Fact } from '../../src/record/commission.ts'
import { standingFacts, stagesDone } from '../../src/record/facts.ts'
import { headOf } from '../../src/record/headOf.ts'
import { inOrder } from '../../src/record/order.ts'
import { beginSteel, countedIds, DEVICE } from './fixture.ts'

const newId = countedIds('b')
const { row } = beginSteel(newId)
const [first, second] = inOrder(row.doc.stages).map(([id]) => id)
let seq = 1
const entry = () => ({
  id: newId(),
  docId: row.id,
  deviceId: DEVICE,
  seq: (seq += 1),
  at: '2026-03-14T09:26:53.000Z',
  gesture: newId(),
  undoes: null,
})
const done = (stageId = ''): Fact => ({ kind: 'stageDone', ...entry(), stageId, builtTo: {} })
const withdrawn = (of: Fact): Fact => ({ kind: 'withdrawal', ...entry(), of: of.id })

describe('facts', () => {
  it('stand until withdrawn, and again when the withdrawal is', () => {
    const fact = done(first)
    const once = withdrawn(fact)
    const twice = withdrawn(once)
    expect(standingFacts([fact])).toEqual([fact])
    expect(standingFacts([fact, once])).toEqual([once])
    expect(standingFacts([fact, once, twice])).toEqual([fact, twice])
    expect(stagesDone([fact, once]).size).toBe(0)
  })

  it('tell the list where an instrument stands', () => {
    const later = done(second)
    const head = (facts: Fact[]) => headOf(row, facts, '2026-03-14T09:26:53.000Z')
    expect(head([])).toMatchObject({
      stagesDone: 0,
      stagesTotal: 3,
      nextStage: 'bendSides',
      number: '26-007',
      client: 'Odile Varnham',
    })
    expect(head([done(first)])).toMatchObject({ stagesDone: 1, nextStage: 'glueBlocks' })
    expect(head([later])).toMatchObject({ stagesDone: 1, nextStage: 'bendSides' })
    expect(head([later, withdrawn(later)])).toMatchObject({ stagesDone: 0 })
    expect(head([done('a stage that was skipped')])).toMatchObject({ stagesDone: 0, stagesTotal: 3 })
  })
})
