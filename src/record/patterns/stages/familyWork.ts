import type { Family, StageKey } from '../stages.ts'
import { held, setting, span, type StagePattern, working } from './stagePattern.ts'

type Differences = Readonly<Partial<Record<StageKey, Partial<StagePattern>>>>

/**
 * Heel first: the workboard stands in the mould's place from the day top, neck and sides come together on it, the top's edge stays flat on
 * it, and the rim is closed before the linings of the back. A polish rubbed on takes many short sittings instead of a few coats. Common
 * practice from memory.
 */
const NYLON_STRING: Differences = {
  bendSides: { fixtures: [...setting('bendingForm'), ...working('bendingIron')] },
  fitTop: { after: ['carveTop', 'slotSides', 'bendSides'], fixtures: [held('workboard', 'closeBox')] },
  glueBlocks: { after: ['makeBlocks', 'fitTop'] },
  braceSides: { after: ['glueBlocks'] },
  glueTop: { after: ['glueBlocks', 'braceSides'], fixtures: setting('smallClamps') },
  radiusRim: { after: ['glueTop'], fixtures: working('backDish') },
  trueRim: { fixtures: working('backDish') },
  fitBack: { after: ['carveBack', 'trueRim'] },
  patchTop: { fixtures: setting('workboard', 'deck') },
  braceTopFine: { after: ['archTopBraces', 'patchTop'], fixtures: setting('workboard', 'deck') },
  braceTop: { after: ['braceTopFine'], fixtures: setting('workboard', 'deck') },
  carveTop: { after: ['braceTop'] },
  // Slots and rollers take two hours more.
  shapeHead: { handsH: span(3, 4.5, 8) },
  slotSides: { after: ['shapeHead'] },
  glueBoard: { after: ['shapeHead', 'scrapeBox', 'bindBoard'] },
  carveNeck: { after: ['glueBoard'] },
  fretBoard: { after: ['carveNeck'] },
  makeBridge: { parts: [] },
  sandAndFill: { after: ['fretBoard'] },
  finish: { times: 16, handsH: span(0.75, 1, 1.25), waitH: span(24, 30, 36), fixtures: [] },
  fitHardware: { parts: ['tuners'] },
}

/** Half the hours go into the coats. Common practice from memory. */
const SMALL: Differences = {
  finish: { handsH: span(0.25, 0.375, 0.75) },
}

/** In what a stage of a family is otherwise than on a steel-string. */
export const FAMILY_WORK: Readonly<Record<Family, Differences>> = {
  steelString: {},
  nylonString: NYLON_STRING,
  small: SMALL,
}
