import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addOwnStage,
  addStage,
  applyPattern,
  duplicateStage,
  moveStage,
  refusalOf,
  setStageDetail,
  skipStage,
  stageAsPattern,
  type StageChange,
} from '../../src/record/changes/stages.ts'
import type { Bundle } from '../../src/record/document.ts'
import { checkRow, readBundle } from '../../src/record/door.ts'
import { replayLog } from '../../src/record/log.ts'
import { inOrder } from '../../src/record/order.ts'
import { STAGE_KEYS, type StageKey, startingStages } from '../../src/record/patterns/stages.ts'
import { STAGES } from '../../src/record/patterns/stagePatterns.ts'
import { type StageInHand, stagesInHand } from '../../src/record/stageInHand.ts'
import { orderTaken } from '../../src/record/orderTaken.ts'
import { orderOfKeys } from '../../src/record/stageOrders.ts'
import { beginSteel, countedIds, edited, metaWith } from './fixture.ts'
import { idOf, inHand, whole } from './orderFixture.ts'

/** Stages left when one without open predecessors is taken off again and again: empty where none wait in a ring. */
function leftInRing(stages: readonly StageInHand[]): readonly string[] {
  let left = stages
  for (;;) {
    const open = new Set(left.map(({ id }) => id))
    const next = left.filter(({ after }) => after.some((id) => open.has(id)))
    if (next.length === left.length) return left.map(({ id }) => id)
    left = next
  }
}

describe('what is said of a stage', () => {
  it('is not kept where the pattern says the same, and goes with the last of it', () => {
    const newId = countedIds()
    const begun = whole(newId)
    const id = idOf(begun, 'finish')
    const steps: readonly [StageChange, unknown][] = [
      [setStageDetail(id, 'times', 4), { times: 4 }],
      [setStageDetail(id, 'title', 'Wipe it on'), { times: 4, title: 'Wipe it on' }],
      [setStageDetail(id, 'times', STAGES.finish.times), { title: 'Wipe it on' }],
      [setStageDetail(id, 'parts', [...STAGES.finish.parts]), { title: 'Wipe it on' }],
      [setStageDetail(id, 'after', inHand(begun, 'finish').after.toReversed()), { title: 'Wipe it on' }],
      [setStageDetail(id, 'title', ''), undefined],
    ]
    let bundle = begun
    for (const [change, own] of steps) {
      bundle = edited(bundle, change, metaWith(newId))
      expect(bundle.row.doc.stages[id]?.own).toEqual(own)
    }
    expect(bundle.row.doc).toEqual(begun.row.doc)
  })

  it('all goes in one step, but for the name of work that has no other', () => {
    const newId = countedIds()
    const own = newId()
    const begun = edited(whole(newId), addOwnStage(own, 'Inlay the head', null), metaWith(newId))
    const bending = idOf(begun, 'bendSides')
    const said = edited(
      edited(begun, setStageDetail(own, 'times', 2), metaWith(newId)),
      setStageDetail(bending, 'oneSitting', false),
      metaWith(newId),
    )
    const back = edited(edited(said, stageAsPattern(own), metaWith(newId)), stageAsPattern(bending), metaWith(newId))
    expect(back.row.doc).toEqual(begun.row.doc)
    expect(back.row.doc.stages[own]?.own).toEqual({ title: 'Inlay the head' })
  })

  it('cannot make stages wait for each other: nothing is stored, and the ring is named', () => {
    const newId = countedIds()
    const begun = whole(newId)
    const [bend, radius] = [idOf(begun, 'bendSides'), idOf(begun, 'radiusRim')]
    const change = setStageDetail(bend, 'after', [radius])
    const refusal = refusalOf(begun.row.doc, change)
    expect(refusal?.code).toBe('circular')
    expect(refusal?.code === 'circular' && refusal.ring).toEqual(expect.arrayContaining([bend, radius]))
    const after = edited(begun, change, metaWith(newId))
    expect(after.changes).toEqual(begun.changes)
    // On itself and on what is not there it cannot wait at all.
    expect(
      edited(begun, setStageDetail(bend, 'after', [bend, newId()]), metaWith(newId)).row.doc.stages[bend]?.own,
    ).toEqual({ after: [] })
  })

  it('of a stage left out passes on to what that one waited for', () => {
    const newId = countedIds()
    const own = newId()
    const withOwn = edited(whole(newId), addOwnStage(own, 'Inlay the head', null), metaWith(newId))
    const [shape, joint] = [idOf(withOwn, 'bendSides'), idOf(withOwn, 'braceSides')]
    const waiting = [
      setStageDetail(own, 'after', [shape, joint]),
      setStageDetail(own, 'fixtures', [{ fixture: 'mould', held: 'until' as const, until: shape }]),
      skipStage(shape),
    ].reduce((bundle, change) => edited(bundle, change, metaWith(newId)), withOwn)
    expect(waiting.row.doc.stages[own]?.own).toEqual({
      title: 'Inlay the head',
      after: [...stagesInHand(withOwn.row.doc).find(({ id }) => id === shape)!.after, joint],
      fixtures: [{ fixture: 'mould', held: 'setting', until: null }],
    })
  })

  it('a stage done once more stands behind the first, waits for it, and takes what is its own', () => {
    const newId = countedIds()
    const begun = whole(newId)
    const [id, again] = [idOf(begun, 'finish'), newId()]
    const said = edited(begun, setStageDetail(id, 'times', 3), metaWith(newId))
    const twice = edited(said, duplicateStage(id, again, 'Build the finish, again'), metaWith(newId))
    const stages = stagesInHand(twice.row.doc)
    const at = stages.findIndex((stage) => stage.id === id)
    expect(stages[at + 1]).toMatchObject({ id: again, times: 3, title: 'Build the finish, again', after: [id] })
    // The cure waits for both.
    expect(inHand(twice, 'cure').after).toEqual([id, again])
  })

  it('stops at as many stages as a record holds', () => {
    const newId = countedIds()
    const keys = Array.from({ length: 200 }, (): StageKey => 'ownWork')
    const full = whole(newId, keys)
    const change = addOwnStage(newId(), 'One more', null)
    expect(refusalOf(full.row.doc, change)).toEqual({ code: 'tooMany', most: 200 })
    expect(edited(full, change, metaWith(newId)).changes).toEqual(full.changes)
    expect(refusalOf(full.row.doc, moveStage(Object.keys(full.row.doc.stages)[0]!, null))).toBeNull()
  })
})

describe('another order', () => {
  it('keeps what both have under its id, what is signed off where it was, and says what comes and goes', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const [bend, blocks, radius] = inOrder(begun.row.doc.stages).map(([id]) => id)
    const own = newId()
    const withOwn = edited(begun, addOwnStage(own, 'Photograph it', radius!), metaWith(newId))
    const wanted = orderOfKeys(['radiusRim', 'joinTop', 'bendSides'], newId)
    const top = inOrder(wanted)[1]![0]
    const taken = orderTaken(withOwn.row.doc.stages, wanted, new Set([own]))
    expect(inOrder(taken.stages).map(([id]) => id)).toEqual([radius, top, bend, own])
    expect(taken).toMatchObject({ stay: [own], comeIn: [top], goOut: [blocks] })
    const after = edited(withOwn, applyPattern(taken.stages), metaWith(newId))
    expect(after.row.doc.stages).toEqual(taken.stages)
    expect(checkRow(after.row).ok).toBe(true)
  })

  it('tells stages of it by the ids they have here, and forgets what is gone', () => {
    const newId = countedIds()
    const begun = whole(newId, ['bendSides', 'glueBlocks'])
    const [bend, blocks] = [idOf(begun, 'bendSides'), idOf(begun, 'glueBlocks')]
    const kept = edited(begun, setStageDetail(blocks, 'after', [bend]), metaWith(newId))
    const wanted = orderOfKeys(['glueBlocks', 'ownWork', 'radiusRim'], newId)
    const ids = inOrder(wanted).map(([id]) => id)
    wanted[ids[2]!]!.own = { after: [ids[0]!, ids[1]!] }
    const { stages } = orderTaken(kept.row.doc.stages, wanted, new Set([blocks]))
    expect(stages[ids[2]!]?.own).toEqual({ after: [blocks, ids[1]] })
    // What is signed off stays as it was; the stage it waited for has gone.
    expect(stages[blocks]?.own ?? {}).toEqual({})
  })
})

type Step = (bundle: Bundle, newId: () => string) => StageChange
const pick = <One>(list: readonly One[], at: number): One | undefined => list[at % Math.max(list.length, 1)]
const at = fc.nat({ max: 300 })
const step: fc.Arbitrary<Step> = fc.oneof(
  fc.tuple(at, at).map(
    ([a, b]): Step =>
      ({ row }) => {
        const ids = Object.keys(row.doc.stages)
        return moveStage(pick(ids, a) ?? '', pick([...ids, null], b) ?? null)
      },
  ),
  at.map(
    (a): Step =>
      ({ row }) =>
        skipStage(pick(Object.keys(row.doc.stages), a) ?? ''),
  ),
  fc.tuple(at, fc.constantFrom(...STAGE_KEYS)).map(
    ([a, key]): Step =>
      ({ row }, newId) =>
        addStage(newId(), key, pick(Object.keys(row.doc.stages), a) ?? null),
  ),
  at.map(
    (a): Step =>
      ({ row }, newId) =>
        duplicateStage(pick(Object.keys(row.doc.stages), a) ?? '', newId(), 'again'),
  ),
  fc.tuple(at, fc.array(at, { maxLength: 4 })).map(
    ([a, others]): Step =>
      ({ row }) => {
        const ids = Object.keys(row.doc.stages)
        return setStageDetail(
          pick(ids, a) ?? '',
          'after',
          others.flatMap((one) => pick(ids, one) ?? []),
        )
      },
  ),
  fc.tuple(at, at).map(
    ([a, b]): Step =>
      ({ row }) => {
        const ids = Object.keys(row.doc.stages)
        const until = pick(ids, b) ?? null
        return setStageDetail(pick(ids, a) ?? '', 'fixtures', [{ fixture: 'mould', held: 'until', until }])
      },
  ),
  fc.tuple(at, fc.integer({ min: 1, max: 3 })).map(
    ([a, times]): Step =>
      ({ row }) =>
        setStageDetail(pick(Object.keys(row.doc.stages), a) ?? '', 'times', times),
  ),
  fc.tuple(fc.constantFrom('steelString', 'nylonString', 'small'), at).map(
    ([family, a]): Step =>
      ({ row }, newId) => {
        const kept = new Set(Object.keys(row.doc.stages).slice(0, a % 5))
        return applyPattern(orderTaken(row.doc.stages, orderOfKeys(startingStages(family), newId), kept).stages)
      },
  ),
)

describe('whatever is done to a building order, one thing after another', () => {
  it('passes the door, never waits in a ring, and comes out of its log again', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('steelString', 'nylonString', 'small'),
        fc.array(step, { minLength: 1, maxLength: 10 }),
        (family, steps) => {
          const newId = countedIds()
          let bundle = whole(newId, startingStages(family).slice(0, 24))
          for (const one of steps) {
            bundle = edited(bundle, one(bundle, newId), metaWith(newId))
            const stages = stagesInHand(bundle.row.doc)
            expect(leftInRing(stages)).toEqual([])
            expect(stages.map(({ id }) => id)).toEqual(inOrder(bundle.row.doc.stages).map(([id]) => id))
            for (const { own } of Object.values(bundle.row.doc.stages)) expect(own).not.toEqual({})
          }
          const { row, changes, facts } = structuredClone(bundle)
          expect(readBundle('commission', { row, changes: [...changes], facts: [...facts] }).ok).toBe(true)
          expect(replayLog(changes)).toMatchObject({ doc: row.doc })
        },
      ),
      { numRuns: 25 },
    )
  }, 30_000)
})
