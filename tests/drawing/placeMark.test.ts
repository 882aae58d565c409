import { expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { rimRowAt } from '../../src/core/instrument/rim.ts'
import { blankDrawing } from '../../src/drawing/blankDrawing.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { markOnBlank, markOnSide } from '../../src/drawing/placeMark.ts'
import { sideDrawing } from '../../src/drawing/sideDrawing.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

const computed = compute(STEEL_STRING.plan)
const row = rimRowAt(computed.geometry.rimSite, 300)
const ends = (drawing: Drawing) => {
  const mark = drawing.shapes.at(-1)
  return mark?.kind === 'path' ? mark.commands.map((command) => command.slice(1)) : []
}

it('stands across the side where the place is, as long as the side is deep and 9 mm more at each edge', () => {
  const [top, back] = ends(markOnSide(sideDrawing(computed), computed, row))
  expect(top?.[0]).toBeCloseTo(row.xMm, 9)
  expect(Number(back?.[1]) - Number(top?.[1])).toBeCloseTo(row.depthMm + 18, 9)
})

it('stands on both blanks at the same distance from their tail ends, which lie left and right', () => {
  const place = (side: 'treble' | 'bass') =>
    Number(ends(markOnBlank(blankDrawing(computed, side), computed, row))[0]?.[0])
  // Trim of 15 mm at each end, 300 mm round the outside less half the thickness times the turning so far.
  expect(place('treble')).toBeCloseTo(15 + row.alongBlankMm, 9)
  expect(place('treble') + place('bass')).toBeCloseTo(0, 9)
})
