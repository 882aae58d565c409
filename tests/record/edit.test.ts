import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { setBriefField } from '../../src/record/changes/brief.ts'
import { archive, markDeleted, rename, restore } from '../../src/record/changes/life.ts'
import { setPieces } from '../../src/record/changes/outline.ts'
import { addRing, changeRing, moveRing, removeRing } from '../../src/record/changes/rings.ts'
import { setField } from '../../src/record/changes/setField.ts'
import { addStage, moveStage, skipStage } from '../../src/record/changes/stages.ts'
import { setTolerance } from '../../src/record/changes/tolerances.ts'
import type { CommissionRecord } from '../../src/record/commission.ts'
import { type Bundle, nextSeq, seenIn } from '../../src/record/document.ts'
import { editDocument, type Recipe } from '../../src/record/edit.ts'
import { signOff, stagesDone } from '../../src/record/facts.ts'
import { replayLog } from '../../src/record/log.ts'
import { inOrder } from '../../src/record/order.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

const RING = { innerRadiusMm: 70, outerRadiusMm: 72, join: 'closed', gapMm: null, tileCount: null } as const

describe('an edit', () => {
  it('gives the new row and one change with its value, its former value and its parent', () => {
    const newId = countedIds()
    const { row, changes } = beginSteel(newId)
    const meta = metaWith(newId)
    const value = valueIn(editDocument(row, changes, setField('plan.rim.depthAtTailMm', 110), meta))
    expect(value.row.doc.plan.rim.depthAtTailMm).toBe(110)
    expect(row.doc.plan.rim.depthAtTailMm).toBe(106)
    expect(value.changes).toEqual([
      {
        id: expect.any(String),
        docId: row.id,
        deviceId: meta.deviceId,
        seq: 2,
        at: meta.at,
        gesture: meta.gesture,
        path: ['doc', 'plan', 'rim', 'depthAtTailMm'],
        value: 110,
        previous: 106,
        after: changes[0]?.id,
        undoes: null,
      },
    ])
  })

  it('names as parent the change that set the value before', () => {
    const newId = countedIds()
    const once = edited(beginSteel(newId), setField('plan.rim.depthAtTailMm', 110), metaWith(newId))
    const other = edited(once, setField('plan.rim.depthAtNeckMm', 91), metaWith(newId))
    const twice = edited(other, setField('plan.rim.depthAtTailMm', 111), metaWith(newId))
    expect(twice.changes.at(-1)?.after).toBe(once.changes.at(-1)?.id)
  })

  it('writes an outline down whole, and a new ring as one entry', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const bent = edited(
      begun,
      ({ doc }) => void (doc.plan.outline.pieces[0] = { kind: 'straight', lengthMm: 3 }),
      metaWith(newId),
    )
    expect(bent.changes.at(-1)?.path).toEqual(['doc', 'plan', 'outline', 'pieces'])
    expect(bent.changes.at(-1)?.previous).toEqual(begun.row.doc.plan.outline.pieces)
    const id = newId()
    const ringed = edited(bent, addRing(id, RING), metaWith(newId))
    expect(ringed.changes.at(-1)).toMatchObject({ path: ['doc', 'plan', 'rosette', 'rings', id] })
    expect(ringed.changes.at(-1)).not.toHaveProperty('previous')
  })

  it('writes nothing where nothing moved', () => {
    const newId = countedIds()
    const { row, changes } = beginSteel(newId)
    for (const recipe of [
      setField<CommissionRecord>('plan.rim.depthAtTailMm', 106),
      setPieces(row.doc.plan.outline.pieces),
    ])
      expect(valueIn(editDocument(row, changes, recipe, metaWith(newId))).changes).toEqual([])
  })

  it.each([
    ['plan.rim.depthAtTailMm', 5],
    ['plan.rim.depthAtTailMm', Number.NaN],
    ['plan.rim.depthAtTailMm', null],
    ['plan.rim.depthAtTailMm', '106'],
    ['plan.back.form', 'square'],
    ['plan.scale.jointFret', 12.5],
    ['brief.promisedOn', '30 November'],
  ])('refuses %s = %s, naming the field, and leaves the record as it was', (field, value) => {
    const newId = countedIds()
    const { row, changes } = beginSteel(newId)
    const answer = editDocument(row, changes, setField(field, value), metaWith(newId))
    expect(answer).toMatchObject({ ok: false, problem: { code: 'wrongField', field } })
  })

  it('does not follow a path into what every object inherits', () => {
    const newId = countedIds()
    const { row, changes } = beginSteel(newId)
    for (const field of ['__proto__.polluted', 'plan.constructor.polluted', 'plan.nowhere.at'])
      expect(valueIn(editDocument(row, changes, setField(field, 1), metaWith(newId))).changes).toEqual([])
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  })
})

type Move = { readonly act: string; readonly a: number; readonly b: number }
const moves = fc.array(
  fc.record({
    act: fc.constantFrom(
      'depth',
      'depth',
      'open',
      'form',
      'pieces',
      'addRing',
      'removeRing',
      'moveRing',
      'changeRing',
      'moveStage',
      'skipStage',
      'addStage',
      'client',
      'tolerance',
      'noTolerance',
      'rename',
      'archive',
      'delete',
      'restore',
      'sign',
      'undo',
      'undo',
      'redo',
    ),
    a: fc.nat(9),
    b: fc.nat(9),
  }),
  { maxLength: 40 },
)

function recipeOf({ act, a, b }: Move, bundle: Bundle, newId: () => string): Recipe<CommissionRecord> {
  const { doc } = bundle.row
  const ring = (i: number): string => inOrder(doc.plan.rosette.rings)[i]?.[0] ?? 'none'
  const stage = (i: number): string => inOrder(doc.stages)[i]?.[0] ?? 'none'
  switch (act) {
    case 'depth':
      return setField('plan.rim.depthAtTailMm', 100 + a)
    case 'open':
      return setField('plan.outline.lengthMm', a < 5 ? null : 490 + b)
    case 'form':
      return setField('plan.back.form', (['sphere', 'across', 'flat'] as const)[a % 3])
    case 'pieces':
      return setPieces(doc.plan.outline.pieces.slice(0, Math.max(1, a)))
    case 'addRing':
      return Object.keys(doc.plan.rosette.rings).length < 12 ? addRing(newId(), RING) : setField('title', 'full')
    case 'removeRing':
      return removeRing(ring(a))
    case 'moveRing':
      return moveRing(ring(a), b > 7 ? null : ring(b))
    case 'changeRing':
      return changeRing(ring(a), { innerRadiusMm: 60 + b, tileCount: b === 0 ? null : b })
    case 'moveStage':
      return moveStage(stage(a), b > 7 ? null : stage(b))
    case 'skipStage':
      return skipStage(stage(a))
    case 'addStage':
      return addStage(newId(), 'finish', stage(b))
    case 'client':
      return setBriefField('client', `client ${a}`)
    case 'tolerance':
      return setTolerance('body.lengthMm', a)
    case 'noTolerance':
      return setTolerance('body.lengthMm', a < 5 ? null : 'asShop')
    case 'rename':
      return rename(`26-0${a}`, `title ${b}`)
    case 'archive':
      return archive(a < 5 ? '2026-01-02' : null)
    case 'delete':
      return markDeleted('2026-01-02T03:04:05.000Z')
    default:
      return restore()
  }
}

/** One more move of the maker's, several of them sharing a gesture now and then. */
function moved(bundle: Bundle, move: Move, newId: () => string, gesture: string): Bundle {
  const { undo, redo } = undoable(bundle.changes, bundle.facts)
  if (move.act === 'undo' || move.act === 'redo') {
    const label = move.act === 'undo' ? undo : redo
    if (label === null) return bundle
    const back = valueIn(takeBack(bundle.row, bundle.changes, bundle.facts, label.gesture, metaWith(newId)))
    return { row: back.row, changes: [...bundle.changes, ...back.changes], facts: [...bundle.facts, ...back.facts] }
  }
  if (move.act === 'sign') {
    const [stageId] = inOrder(bundle.row.doc.stages)[move.a] ?? []
    if (stageId === undefined) return bundle
    const fact = signOff(bundle.row, stageId, { 'body.lengthMm': 496 }, metaWith(newId))
    return { ...bundle, row: { ...bundle.row, seen: seenIn([fact], bundle.row.seen) }, facts: [...bundle.facts, fact] }
  }
  return edited(bundle, recipeOf(move, bundle, newId), metaWith(newId, gesture))
}

describe('the log', () => {
  it('replayed gives the record, after any edits, undos and redos', () => {
    fc.assert(
      fc.property(moves, (list) => {
        const newId = countedIds()
        let bundle = beginSteel(newId)
        for (const move of list) {
          bundle = moved(bundle, move, newId, newId())
          expect(replayLog(bundle.changes, bundle.facts)).toEqual(bundle.row)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('undone to its beginning gives the first plan, and redone the last, also when read anew', () => {
    fc.assert(
      fc.property(moves, (list) => {
        const newId = countedIds()
        let bundle = beginSteel(newId)
        const first = bundle.row.doc
        for (const move of list) {
          const isHousekeeping = ['archive', 'delete', 'restore', 'undo', 'redo'].includes(move.act)
          if (!isHousekeeping) bundle = moved(bundle, move, newId, newId())
        }
        const last = bundle.row.doc
        const done = stagesDone(bundle.facts).size
        for (let left = 200; undoable(bundle.changes, bundle.facts).undo !== null; left -= 1) {
          expect(left).toBeGreaterThan(0)
          bundle = moved(JSON.parse(JSON.stringify(bundle)) as Bundle, { act: 'undo', a: 0, b: 0 }, newId, newId())
        }
        expect(bundle.row.doc).toEqual(first)
        expect(stagesDone(bundle.facts).size).toBe(0)
        for (let left = 200; undoable(bundle.changes, bundle.facts).redo !== null; left -= 1) {
          expect(left).toBeGreaterThan(0)
          bundle = moved(bundle, { act: 'redo', a: 0, b: 0 }, newId, newId())
        }
        expect(bundle.row.doc).toEqual(last)
        expect(stagesDone(bundle.facts).size).toBe(done)
        expect(replayLog(bundle.changes, bundle.facts)).toEqual(bundle.row)
      }),
      { numRuns: 40 },
    )
  })

  it('takes all strokes of one visit to a field back together', () => {
    const newId = countedIds()
    const gesture = newId()
    let bundle = beginSteel(newId)
    for (const depth of [100, 101, 102])
      bundle = edited(bundle, setField('plan.rim.depthAtTailMm', depth), metaWith(newId, gesture))
    bundle = moved(bundle, { act: 'undo', a: 0, b: 0 }, newId, newId())
    expect(bundle.row.doc.plan.rim.depthAtTailMm).toBe(106)
    expect(undoable(bundle.changes, bundle.facts).undo).toBeNull()
    expect(undoable(bundle.changes, bundle.facts).redo?.fields).toEqual(['plan.rim.depthAtTailMm'])
  })

  it('passes over a gesture that came to nothing, and one on the document as a whole', () => {
    const newId = countedIds()
    const gesture = newId()
    let bundle = edited(beginSteel(newId), setField('title', 'Another'), metaWith(newId))
    for (const depth of [9, 106])
      bundle = edited(bundle, setField('plan.rim.depthAtTailMm', 100 + depth), metaWith(newId, gesture))
    bundle = edited(bundle, setField('plan.rim.depthAtTailMm', 106), metaWith(newId, gesture))
    bundle = edited(bundle, markDeleted('2026-01-02T03:04:05.000Z'), metaWith(newId))
    expect(undoable(bundle.changes, bundle.facts).undo?.fields).toEqual(['title'])
  })

  it('loses what could be redone once something new is entered', () => {
    const newId = countedIds()
    let bundle = edited(beginSteel(newId), setField('title', 'Another'), metaWith(newId))
    bundle = moved(bundle, { act: 'undo', a: 0, b: 0 }, newId, newId())
    bundle = edited(bundle, setField('title', 'A third'), metaWith(newId))
    expect(undoable(bundle.changes, bundle.facts).redo).toBeNull()
  })

  it('gives each entry the place after everything seen from any device', () => {
    expect(nextSeq({ seen: { [countedIds()()]: 7, [countedIds('b')()]: 12 } })).toBe(13)
  })
})
