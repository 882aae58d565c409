import { describe, expect, it } from 'vitest'
import { moveStage, setStageDetail } from '../../src/record/changes/stages.ts'
import { STAGES } from '../../src/record/patterns/stagePatterns.ts'
import { startingStages } from '../../src/record/patterns/stages.ts'
import { stagesInHand } from '../../src/record/stageInHand.ts'
import { countedIds, edited, metaWith } from './fixture.ts'
import { idOf, inHand, keysIn, whole } from './orderFixture.ts'

describe('a stage in hand', () => {
  it('is what the pattern says, with places counted from 1', () => {
    const bundle = whole(countedIds())
    const bending = inHand(bundle, 'bendSides')
    expect(bending.handsH).toEqual(STAGES.bendSides.handsH)
    expect(bending.waitH).toEqual(STAGES.bendSides.waitH)
    expect(bending.place).toBe(startingStages('steelString').indexOf('bendSides') + 1)
    expect(keysIn(bundle.row.doc, bending.after)).toEqual(STAGES.bendSides.after)
    expect(bending.fixtures.find(({ held }) => held === 'until')?.until).toBe(idOf(bundle, 'settleInMould'))
    expect(bending.title).toBeNull()
  })

  it('takes in the work of finer stages that are left out, each as often as it is done', () => {
    const bundle = whole(
      countedIds(),
      startingStages('steelString').filter((key) => key !== 'cure'),
    )
    const { finish, cure } = STAGES
    expect(inHand(bundle, 'finish').handsH.likely).toBeCloseTo(
      finish.handsH.likely * finish.times + cure.handsH.likely * cure.times,
      12,
    )
    expect(inHand(bundle, 'finish').waitH.high).toBeCloseTo(
      finish.waitH.high * finish.times + cure.waitH.high * cure.times,
      12,
    )
    // Polishing waits for the cure, and with that left out for what the cure waits for.
    expect(keysIn(bundle.row.doc, inHand(bundle, 'polish').after)).toEqual(['finish'])
  })

  it('takes what its maker says before the pattern, and leaves out what is not there', () => {
    const newId = countedIds()
    const begun = whole(newId)
    const id = idOf(begun, 'braceTop')
    const said = edited(begun, setStageDetail(id, 'handsH', { low: 1, likely: 9, high: 12 }), metaWith(newId))
    expect(inHand(said, 'braceTop').handsH.likely).toBe(9)
    const noted = edited(said, setStageDetail(id, 'note', ' Warm the cauls.\n\nCount to ten. '), metaWith(newId))
    expect(inHand(noted, 'braceTop').note).toEqual(['Warm the cauls.', 'Count to ten.'])
    const odd = structuredClone(noted.row.doc)
    odd.stages[id]!.own = { after: [newId()], fixtures: [{ fixture: 'deck', held: 'until', until: newId() }] }
    const shown = stagesInHand(odd).find((stage) => stage.id === id)!
    expect(shown.after).toEqual([])
    expect(shown.fixtures).toEqual([{ fixture: 'deck', held: 'until', until: null }])
  })

  it('says which stages it needs stand behind it', () => {
    const newId = countedIds()
    const begun = whole(newId)
    const moved = edited(begun, moveStage(idOf(begun, 'radiusRim'), idOf(begun, 'bendSides')), metaWith(newId))
    const { standsBefore, place } = inHand(moved, 'radiusRim')
    expect(standsBefore.length).toBeGreaterThan(0)
    for (const id of standsBefore)
      expect(stagesInHand(moved.row.doc).find((stage) => stage.id === id)!.place).toBeGreaterThan(place)
    expect(inHand(begun, 'radiusRim').standsBefore).toEqual([])
  })
})
