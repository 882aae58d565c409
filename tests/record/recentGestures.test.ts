import { describe, expect, it } from 'vitest'
import type { Change, Fact } from '../../src/record/commission.ts'
import { recentGestures } from '../../src/record/recentGestures.ts'

const DEVICE = '00000000-0000-4000-8000-0000000000d1'
const id = (n: number): string => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`

const change = (seq: number, gesture: number, path: string[], undoes: string | null = null): Change => ({
  id: id(seq),
  docId: id(900),
  deviceId: DEVICE,
  seq,
  at: `2026-11-25T10:00:0${seq}.000Z`,
  gesture: id(gesture),
  path,
  value: seq,
  after: null,
  undoes,
})
const head = (seq: number, gesture: number) => ({
  id: id(seq),
  docId: id(900),
  deviceId: DEVICE,
  seq,
  at: `2026-11-25T10:00:0${seq}.000Z`,
  gesture: id(gesture),
  undoes: null,
})

describe('the last actions', () => {
  const changes = [
    change(1, 101, ['doc', 'plan', 'rim', 'depthAtTailMm']),
    change(2, 101, ['doc', 'plan', 'rim', 'depthAtNeckMm']),
    change(4, 103, ['doc', 'plan', 'rim', 'depthAtTailMm'], id(101)),
  ]
  const facts: Fact[] = [
    { kind: 'stageDone', ...head(3, 102), stageId: id(500), builtTo: {} },
    { kind: 'withdrawal', ...head(5, 104), of: id(3) },
  ]

  it('come newest first, each once, with the places and stages they touched', () => {
    expect(recentGestures(changes, facts, 9)).toEqual([
      { gesture: id(104), fields: [], stageIds: [id(500)], at: '2026-11-25T10:00:05.000Z', undoes: true },
      {
        gesture: id(103),
        fields: ['plan.rim.depthAtTailMm'],
        stageIds: [],
        at: '2026-11-25T10:00:04.000Z',
        undoes: true,
      },
      { gesture: id(102), fields: [], stageIds: [id(500)], at: '2026-11-25T10:00:03.000Z', undoes: false },
      {
        gesture: id(101),
        fields: ['plan.rim.depthAtNeckMm', 'plan.rim.depthAtTailMm'],
        stageIds: [],
        at: '2026-11-25T10:00:02.000Z',
        undoes: false,
      },
    ])
  })

  it('name the stage that was timed or is to be done again', () => {
    const told: Fact[] = [
      { kind: 'hours', ...head(6, 105), stageId: id(501), hours: 2, on: '2026-11-25', sharedBy: 1 },
      { kind: 'redo', ...head(7, 106), stageId: id(502), reason: '' },
    ]
    expect(recentGestures([], told, 9).map(({ stageIds }) => stageIds)).toEqual([[id(502)], [id(501)]])
  })

  it('are cut off at the number asked for, whole', () => {
    expect(recentGestures(changes, facts, 2).map((one) => one.gesture)).toEqual([id(104), id(103)])
  })
})
