import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { PLAN_FIELDS } from '../../src/core/planFields.ts'
import {
  beginModel,
  giveToModel,
  goByModel,
  renameModel,
  takeAllFromModel,
  takeFromModel,
} from '../../src/record/changes/model.ts'
import type { ModelRecord } from '../../src/record/commission.ts'
import type { Bundle } from '../../src/record/document.ts'
import { readBundle } from '../../src/record/door.ts'
import { editDocument, type Recipe } from '../../src/record/edit.ts'
import { readPackedModel } from '../../src/record/houseModel.ts'
import { replayLog } from '../../src/record/log.ts'
import { modelDifferences, planWithFields } from '../../src/record/modelDifferences.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { DEMO_MODELS, SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

const steel = STEEL_STRING.plan
/** A copy of a plan with another value at one place. */
function withField(plan: Plan, field: string, value: unknown): Plan {
  const copy = structuredClone(plan)
  const steps = field.split('.')
  const last = steps.pop() ?? ''
  const level = steps.reduce<Record<string, unknown>>(
    (inner, step) => inner[step] as Record<string, unknown>,
    copy as unknown as Record<string, unknown>,
  )
  level[last] = value
  return copy
}
const fieldsOf = (here: Plan, asTaken: Plan | null, today: Plan | null) =>
  modelDifferences(here, asTaken, today).map(({ field }) => field)
/** A copy whose objects hold their keys the other way round. */
const turned = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turned)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .toReversed()
      .map(([key, inner]) => [key, turned(inner)]),
  )
}

describe('an instrument beside its model', () => {
  it('differs nowhere from a model that says the same in another order of keys', () => {
    expect(fieldsOf(steel, turned(steel) as Plan, structuredClone(steel))).toEqual([])
    expect(fieldsOf(steel, null, null)).toEqual([])
  })

  it('differs in each field that was moved, in the order of the plan, with what each of the three holds', () => {
    const here = withField(withField(steel, 'rosette.inlayMm', 1.5), 'rim.depthAtTailMm', 104)
    const today = withField(steel, 'back.radiusMm', 5000)
    expect(modelDifferences(here, steel, today)).toEqual([
      { field: 'rim.depthAtTailMm', here: 104, asTaken: steel.rim.depthAtTailMm, today: steel.rim.depthAtTailMm },
      { field: 'back.radiusMm', here: steel.back.radiusMm, asTaken: steel.back.radiusMm, today: 5000 },
      { field: 'rosette.inlayMm', here: 1.5, asTaken: steel.rosette.inlayMm, today: steel.rosette.inlayMm },
    ])
  })

  it('differs in one field where what makes sense only whole has moved inside', () => {
    const [first, ...rest] = steel.outline.pieces
    const pieces = [{ ...first, sweepDeg: 4 }, ...rest] as Plan['outline']['pieces']
    expect(fieldsOf({ ...steel, outline: { ...steel.outline, pieces } }, steel, null)).toEqual(['outline.pieces'])
    const [id = '', ring] = Object.entries(steel.rosette.rings)[0] ?? []
    const rings = { ...steel.rosette.rings, [id]: { ...ring!, tileCount: 7 } }
    expect(fieldsOf({ ...steel, rosette: { ...steel.rosette, rings } }, null, steel)).toEqual(['rosette.rings'])
  })

  it('tells open from absent, and leaves out the plan that is not known', () => {
    const here = withField(steel, 'outline.lengthMm', null)
    expect(modelDifferences(here, null, steel)).toEqual([{ field: 'outline.lengthMm', here: null, today: 496 }])
    expect(Object.hasOwn(modelDifferences(here, steel, null)[0] ?? {}, 'today')).toBe(false)
  })

  it.each(DEMO_MODELS)('has no place that the fields leave out: all of them together are $name', ({ plan }) => {
    expect(planWithFields(steel, plan, PLAN_FIELDS)).toEqual(plan)
    expect(planWithFields(plan, steel, [])).toBe(plan)
  })
})

describe('taking from a model', () => {
  const small = { modelId: SMALL.id, name: SMALL.name, plan: SMALL.plan }

  it('sets one field and nothing else, and is taken back in one step', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const after = edited(begun, takeFromModel('rim.depthAtTailMm', SMALL.plan), metaWith(newId))
    expect(after.row.doc).toEqual({
      ...begun.row.doc,
      plan: { ...steel, rim: { ...steel.rim, depthAtTailMm: SMALL.plan.rim.depthAtTailMm } },
    })
    expect(after.changes.at(-1)?.path).toEqual(['doc', 'plan', 'rim', 'depthAtTailMm'])
    const gesture = undoable(after.changes, []).undo?.gesture ?? ''
    expect(valueIn(takeBack(after.row, after.changes, [], gesture, metaWith(newId))).row.doc).toEqual(begun.row.doc)
  })

  it('sets a field whole as one change', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    for (const field of ['outline.pieces', 'rosette.rings', 'sideBraces.atMm'] as const) {
      const { row, changes } = edited(begun, takeFromModel(field, SMALL.plan), metaWith(newId))
      expect(changes).toHaveLength(2)
      expect(modelDifferences(row.doc.plan, SMALL.plan, null).map((one) => one.field)).not.toContain(field)
    }
  })

  it('all of it at once leaves only the hand, keeps the model as taken, and is one gesture', () => {
    const newId = countedIds()
    const begun = edited(beginSteel(newId), ({ doc }) => void (doc.plan.handed = 'left'), metaWith(newId))
    const after = edited(begun, takeAllFromModel(small), metaWith(newId))
    expect(after.row.doc.plan).toEqual({ ...SMALL.plan, handed: 'left' })
    expect(after.row.doc.modelAsTaken).toEqual(small)
    expect(replayLog(after.changes)).toEqual(after.row)
    const gesture = after.changes.at(-1)?.gesture ?? ''
    const back = valueIn(takeBack(after.row, after.changes, [], gesture, metaWith(newId)))
    expect(back.row.doc).toEqual(begun.row.doc)
  })

  it('or only going by it moves no field of the plan', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const { row, changes } = edited(begun, goByModel(small), metaWith(newId))
    expect(row.doc).toEqual({ ...begun.row.doc, modelAsTaken: small })
    expect(changes.at(-1)?.path).toEqual(['doc', 'modelAsTaken'])
  })
})

describe('a model', () => {
  const begin = (newId: () => string): Bundle<ModelRecord> => {
    const read = valueIn(readPackedModel({ id: SMALL.id, name: SMALL.name, family: SMALL.family, plan: SMALL.plan }))
    const { id, ...doc } = read
    return valueIn(beginModel(id, { ...doc, demo: true }, metaWith(newId)))
  }
  const changed = (bundle: Bundle<ModelRecord>, recipe: Recipe<ModelRecord>, newId: () => string) => {
    const { row, changes } = valueIn(editDocument(bundle.row, bundle.changes, recipe, metaWith(newId)))
    return { row, changes: [...bundle.changes, ...changes], facts: [] }
  }

  it('is a document with a log, and passes the door', () => {
    const bundle = begin(countedIds())
    expect(bundle.row).toMatchObject({ id: SMALL.id, kind: 'model', doc: { name: SMALL.name, demo: true } })
    expect(replayLog(bundle.changes)).toEqual(bundle.row)
    expect(valueIn(readBundle('model', bundle)).bundle).toEqual(bundle)
    expect(readBundle('commission', bundle)).toMatchObject({ ok: false, problem: { code: 'notOurs' } })
  })

  it('given a plan has it but for the hand, is the maker’s from then on, and has its own back by undo', () => {
    const newId = countedIds()
    const bundle = begin(newId)
    const given = changed(bundle, giveToModel({ ...steel, handed: 'left' }), newId)
    expect(given.row.doc).toEqual({ ...bundle.row.doc, plan: { ...steel, handed: 'right' }, demo: false })
    const gesture = given.changes.at(-1)?.gesture ?? ''
    expect(valueIn(takeBack(given.row, given.changes, [], gesture, metaWith(newId))).row.doc).toEqual(bundle.row.doc)
  })

  it('renamed is the maker’s too', () => {
    const newId = countedIds()
    expect(changed(begin(newId), renameModel('Wader'), newId).row.doc).toMatchObject({ name: 'Wader', demo: false })
  })

  it('that no schema would take is refused', () => {
    const newId = countedIds()
    const { row, changes } = begin(newId)
    const tooDeep = giveToModel(withField(steel, 'rim.depthAtTailMm', 900))
    expect(editDocument(row, changes, tooDeep, metaWith(newId))).toMatchObject({
      ok: false,
      problem: { field: 'plan.rim.depthAtTailMm' },
    })
  })
})
