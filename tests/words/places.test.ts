import { expect, it } from 'vitest'
import { placeName } from '../../src/words/places.ts'

it.each([
  ['plan.sideBraces.atMm', 'Places of the side braces'],
  ['plan.sideBraces.atMm.2', 'Places of the side braces'],
  ['plan.outline.halfWidths.rows.11.1', 'Half-width readings'],
  ['plan.outline.halfWidths.tailRows', 'Readings at the tail end'],
  ['plan.outline.drawnPath.bass.strokes.3', 'Drawn path'],
  ['plan.outline.pieces.0.radiusMm', 'Compass pieces'],
  ['plan.outline.cutaway.leavesAtMm', 'Cutaway begins at'],
  ['plan.linings.wastePercent', 'Waste of lining'],
  ['plan.nothing.known', 'plan.nothing.known'],
])('%s is called %s', (field, name) => {
  expect(placeName(field)).toBe(name)
})
