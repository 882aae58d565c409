import type { Plan } from '../core/plan.ts'
import type { Drawing, DrawingName } from './drawing.ts'
import { type FlipAxis, flipped } from './flipped.ts'

/**
 * What the other hand changes. A body seen from the front keeps tail and neck and changes bass and treble; a side seen from outside or
 * inside, or laid flat, changes tail and neck, as a cut across changes bass and treble. A cut along the centreline is the same for both.
 */
const HANDED_ALONG: Record<DrawingName, FlipAxis | 'none'> = {
  plan: 'y',
  bevels: 'y',
  rosette: 'y',
  blockTail: 'y',
  blockNeck: 'y',
  side: 'x',
  inside: 'x',
  blankTreble: 'x',
  blankHorn: 'x',
  blankBass: 'x',
  domes: 'x',
  section: 'none',
  bracingTop: 'y',
  bracingBack: 'y',
  braceSide: 'none',
  edgeSection: 'none',
  fretboard: 'y',
  strings: 'x',
  neckSet: 'none',
  bridge: 'y',
  bridgeSection: 'none',
  neckSide: 'none',
  head: 'y',
  plank: 'none',
  outlineTemplate: 'y',
  formLine: 'y',
  contourBoard: 'y',
  archTemplate: 'none',
  slottingRuler: 'y',
  bridgeGauge: 'y',
  neckSetGauge: 'none',
  bindingGauge: 'none',
}

/** A drawing made for the right hand as the plan's hand has it. */
export function asHanded(drawing: Drawing, handed: Plan['handed']): Drawing {
  const axis = HANDED_ALONG[drawing.name]
  return handed === 'right' || axis === 'none' ? drawing : flipped(drawing, axis)
}
