import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { rowAtPlace } from '../../src/core/instrument/placeOnSide.ts'
import { HANDS, type Plan } from '../../src/core/plan.ts'
import { blankDrawing } from '../../src/drawing/blankDrawing.ts'
import { drawingOf } from '../../src/drawing/drawingOf.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { asHanded } from '../../src/drawing/handed.ts'
import { woodOf } from '../../src/drawing/innerFace.ts'
import { markOnBlank, markOnSide } from '../../src/drawing/placeMark.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

const cutBy = (form: Plan['outline']['cutaway']['form'], handed: Plan['handed']): Plan => ({
  ...STEEL_STRING.plan,
  handed,
  outline: {
    ...STEEL_STRING.plan.outline,
    cutaway: { form, leavesAtMm: 430, hornRadiusMm: 25, hollowRadiusMm: 70, meetsNeckAtMm: 32 },
  },
})
const markXMm = (drawing: Drawing): number => {
  const mark = drawing.shapes.at(-1)
  return mark?.kind === 'path' ? Number(mark.commands[0]?.[1]) : Number.NaN
}
const CASES = (['none', 'rounded', 'pointed'] as const).flatMap((form) =>
  HANDS.flatMap((handed) => (['treble', 'bass'] as const).map((side) => [form, handed, side] as const)),
)

describe.each(CASES)('cutaway %s, %s-handed, %s side', (form, handed, side) => {
  const plan = cutBy(form, handed)
  const computed = compute(plan)

  it.each([0, 150, 333, 500, 620, 700])('has the place %i mm round the outside marked in its drawings', (alongMm) => {
    const { row, piece } = rowAtPlace(woodOf(computed.geometry, side), { alongMm, blank: null })
    const elevation = markOnSide(drawingOf('side', computed, plan, { side }), computed, row)
    // Looked at from outside, the tail of a treble side is at the left of a right-handed body; all else turns it.
    const isTailLeft = (side === 'treble') === (handed === 'right')
    expect(elevation.marks.left).toBe(isTailLeft ? 'tail' : 'neck')
    expect(markXMm(elevation)).toBeCloseTo(isTailLeft ? row.xMm : -row.xMm, 9)

    const blank = markOnBlank(asHanded(blankDrawing(computed, side, piece), handed), computed, row)
    const { minX, maxX } = blank.bounds
    const trimMm = plan.rim.trimEachEndMm
    // From the end of the blank that its piece begins at.
    expect(isTailLeft ? markXMm(blank) - minX : maxX - markXMm(blank)).toBeCloseTo(trimMm + row.alongBlankMm, 6)
  })

  it('ends where its wood does', () => {
    const { row } = rowAtPlace(woodOf(computed.geometry, side), { alongMm: 5000, blank: null })
    const places = side === 'treble' && form !== 'none' ? computed.numbers.treblePlaces : computed.numbers.places
    expect(row.alongOuterMm).toBeCloseTo(places.at(-1)!.alongOuterMm, 9)
  })
})
