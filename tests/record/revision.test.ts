import { describe, expect, it } from 'vitest'
import { setBriefField } from '../../src/record/changes/brief.ts'
import { addRing, removeRing } from '../../src/record/changes/rings.ts'
import { setField } from '../../src/record/changes/setField.ts'
import { setTolerance } from '../../src/record/changes/tolerances.ts'
import type { CommissionRecord } from '../../src/record/commission.ts'
import type { Recipe } from '../../src/record/edit.ts'
import { changesSinceRevision, parseRevisionCode } from '../../src/record/revision.ts'
import { revisionCode } from '../../src/record/revisionCode.ts'
import { beginSteel, countedIds, edited, metaWith } from './fixture.ts'

describe('the revision code', () => {
  it('is six signs that cannot be mistaken for one another', () => {
    expect(revisionCode(beginSteel(countedIds()).row.doc)).toMatch(/^[0-9A-HJKMNP-TV-Z]{6}$/)
  })

  it('changes with the plan, its tolerances and its stages, and with nothing else', () => {
    const newId = countedIds()
    const start = beginSteel(newId)
    const code = revisionCode(start.row.doc)
    const codeAfter = (recipe: Parameters<typeof edited>[1]): string =>
      revisionCode(edited(start, recipe, metaWith(newId)).row.doc)
    expect(codeAfter(setBriefField('client', 'Someone else'))).toBe(code)
    expect(codeAfter(setField('title', 'Another'))).toBe(code)
    expect(codeAfter(setField('plan.rim.depthAtTailMm', 106.1))).not.toBe(code)
    expect(codeAfter(setTolerance('body.lengthMm', 1))).not.toBe(code)
    expect(codeAfter(({ doc }) => void delete doc.stages[Object.keys(doc.stages)[0] ?? ''])).not.toBe(code)
  })

  it.each([
    ['plan.air.holeChangeMm', 7],
    ['plan.air.depthChangeMm', -3],
    ['plan.air.heardHz', 104],
    ['plan.cutting.planks', {}],
  ])('is not moved by what changes nothing that is built: %s', (field, value) => {
    const newId = countedIds()
    const start = beginSteel(newId)
    const asked = edited(start, setField(field, value), metaWith(newId))
    expect(asked.changes.length).toBeGreaterThan(start.changes.length)
    expect(revisionCode(asked.row.doc)).toBe(revisionCode(start.row.doc))
    // Nor is it told as a difference where something else has changed.
    const deeper = edited(asked, setField('plan.rim.depthAtTailMm', 110), metaWith(newId))
    expect(changesSinceRevision(revisionCode(start.row.doc), deeper.row.doc, deeper.changes)).toMatchObject({
      kind: 'changed',
      differences: [{ field: 'plan.rim.depthAtTailMm' }],
    })
  })

  it('is moved by the air and the woods that are built to', () => {
    const newId = countedIds()
    const start = beginSteel(newId)
    for (const [field, value] of [
      ['plan.air.temperatureC', 25],
      ['plan.cutting.kerfMm', 2],
    ] as const)
      expect(revisionCode(edited(start, setField(field, value), metaWith(newId)).row.doc)).not.toBe(
        revisionCode(start.row.doc),
      )
  })

  it('does not hang on the order in which keys came to be', () => {
    const { doc } = beginSteel(countedIds()).row
    const turned = Object.fromEntries(Object.entries(doc.plan).reverse()) as typeof doc.plan
    expect(revisionCode({ ...doc, plan: turned })).toBe(revisionCode(doc))
  })

  it('keeps a thousand near plans apart', () => {
    const { doc } = beginSteel(countedIds()).row
    const codes = Array.from({ length: 1000 }, (_, i) =>
      revisionCode({ ...doc, plan: { ...doc.plan, rim: { ...doc.plan.rim, depthAtTailMm: 100 + i / 100 } } }),
    )
    expect(new Set(codes).size).toBe(1000)
  })

  it.each([
    ['k7q2m9', 'K7Q2M9'],
    [' K7Q-2M9 ', 'K7Q2M9'],
    ['oil0I1', '011011'],
    ['K7Q2M', null],
    ['K7Q2MU', null],
    ['', null],
  ])('typed as %j is read as %j', (typed, code) => {
    expect(parseRevisionCode(typed)).toBe(code)
  })
})

describe('what changed since a sheet was printed', () => {
  const newId = countedIds()
  const start = beginSteel(newId)
  const ringId = Object.keys(start.row.doc.plan.rosette.rings)[0] ?? ''
  const deeper = edited(start, setField('plan.rim.depthAtTailMm', 110), metaWith(newId))
  const fresh = newId()
  const recipes: readonly Recipe<CommissionRecord>[] = [
    setField('plan.rim.depthAtTailMm', 112),
    setField('plan.outline.lengthMm', null),
    setBriefField('client', 'Someone else'),
    removeRing(ringId),
    addRing(fresh, { innerRadiusMm: 70, outerRadiusMm: 72, join: 'closed', gapMm: null, tileCount: null }),
    setTolerance('body.lengthMm', 1),
  ]
  const later = recipes.reduce((bundle, recipe) => edited(bundle, recipe, metaWith(newId)), deeper)

  it('is listed path by path, with the value that stood there and the one that stands now', () => {
    const since = changesSinceRevision(revisionCode(deeper.row.doc).toLowerCase(), later.row.doc, later.changes)
    expect(since).toMatchObject({ kind: 'changed', stoodAt: deeper.changes.at(-1)?.at })
    if (since.kind !== 'changed') return
    expect(since.differences.toSorted((a, b) => (a.field < b.field ? -1 : 1))).toEqual(
      [
        { field: 'plan.outline.lengthMm', before: 496, now: null },
        { field: 'plan.rim.depthAtTailMm', before: 110, now: 112 },
        { field: `plan.rosette.rings.${ringId}`, before: start.row.doc.plan.rosette.rings[ringId] },
        { field: `plan.rosette.rings.${fresh}`, now: later.row.doc.plan.rosette.rings[fresh] },
        { field: 'tolerances.body.lengthMm', now: 1 },
      ].toSorted((a, b) => (a.field < b.field ? -1 : 1)),
    )
  })

  it('is nothing for the code of the present, and unknown for a code that never was', () => {
    expect(changesSinceRevision(revisionCode(later.row.doc), later.row.doc, later.changes)).toEqual({
      kind: 'unchanged',
    })
    expect(changesSinceRevision('ZZZZZZ', later.row.doc, later.changes)).toEqual({ kind: 'unknown' })
    expect(changesSinceRevision('no code', later.row.doc, later.changes)).toEqual({ kind: 'unknown' })
  })
})
