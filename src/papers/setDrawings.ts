import type { Drawing } from '../drawing/drawing.ts'
import { drawingOf } from '../drawing/drawingOf.ts'
import type { PaperOrder } from './paperOrder.ts'

/** A drawing of the set, and what it is called there. */
export interface SetDrawing {
  readonly drawing: Drawing
  readonly title: string
}

/** The shop drawings of an instrument, outside in and tail to head. Sides that are alike stand once, those that differ each by itself. */
export function setDrawings(order: PaperOrder): readonly SetDrawing[] {
  const { computed, doc, words } = order
  const { nameOf, ofSide } = words.drawingSet
  const named = (drawing: Drawing, side?: 'bass' | 'treble'): SetDrawing => ({
    drawing,
    title: side === undefined ? nameOf(drawing.name) : `${nameOf(drawing.name)}, ${ofSide[side]}`,
  })
  const { isMirrored } = computed.geometry.outline
  const ofBody = (...args: [Parameters<typeof drawingOf>[0], { readonly side?: 'bass' | 'treble' }?]) =>
    drawingOf(args[0], computed, doc.plan, args[1])
  const hasHorn = computed.numbers.blanks.length > 2
  return [
    named(order.drawingOf('plan')),
    ...(isMirrored
      ? [named(order.drawingOf('side'))]
      : (['treble', 'bass'] as const).map((side) => named(ofBody('side', { side }), side))),
    named(order.drawingOf('section')),
    named(order.drawingOf('domes')),
    named(order.drawingOf('blankTreble')),
    ...(hasHorn ? [named(ofBody('blankHorn'))] : []),
    ...(isMirrored ? [] : [named(ofBody('blankBass'))]),
    ...(
      [
        'blockTail',
        'blockNeck',
        'rosette',
        'bracingTop',
        'bracingBack',
        'edgeSection',
        'neckSet',
        'fretboard',
        'strings',
        'neckSide',
        'head',
        'bridge',
        'bridgeSection',
      ] as const
    ).map((name) => named(order.drawingOf(name))),
  ]
}
