import type { BraceEndPlan, BracePlan } from '../../core/boxPlan.ts'
import type { PlankPlan } from '../../core/woodPlan.ts'
import type { BOX_FIELDS } from '../../core/planFields.ts'
import type { FieldWords } from './fieldWords.ts'

export const BOX_WORDS: Record<(typeof BOX_FIELDS)[number], FieldWords> = {
  'bracing.braces': { name: 'Braces', hint: 'Of the top and of the back.' },
  'bracing.blankEndMm': { name: 'Blank longer by', hint: 'Beyond each tip, let-in ends and all.' },
  'bracing.blankHeightMm': { name: 'Blank higher by', hint: 'Over arch and height, for planing.' },
  'bracing.blankWidthMm': { name: 'Blank wider by', hint: 'For planing.' },
  'bracing.crossPatchMm': {
    name: 'Crossing patch',
    hint: 'Edge of a square over every lapped crossing of the top; 0 for none.',
  },
  'bracing.crossPatchThicknessMm': { name: 'Crossing patch, thickness', hint: 'Of the patch.' },
  'bracing.holeRingMm': { name: 'Ring round the hole', hint: 'Width of the ring glued inside; 0 for none.' },
  'bracing.holeRingSetBackMm': { name: 'Ring set back by', hint: 'From the edge of the hole.' },
  'bracing.holeRingThicknessMm': { name: 'Ring, thickness', hint: 'Of the wood round the hole.' },
  'bracing.stripWidthMm': { name: 'Strip on the back’s joint', hint: 'Width of the strip glued inside; 0 for none.' },
  'bracing.stripThicknessMm': { name: 'Strip, thickness', hint: 'Of the strip inside.' },
  'air.temperatureC': { name: 'Temperature', hint: 'Of the air in the box.' },
  'air.holeChangeMm': { name: 'If the hole’s radius grows by', hint: 'Less than nothing: smaller.' },
  'air.depthChangeMm': { name: 'If the rim is deeper by', hint: 'All round. Less than nothing: shallower.' },
  'air.heardHz': {
    name: 'Heard when tapped',
    hint: 'Of the closed box: a note such as G#2 +3, or hertz. Open: not tapped yet.',
  },
  'edges.purflingDepthMm': { name: 'Purfling ledge, depth', hint: 'From the plate’s outer face down.' },
  'edges.trimMm': { name: 'Strips longer by', hint: 'At each end, trimmed off after fitting.' },
  'edges.wedgeTopMm': { name: 'End wedge at the top', hint: 'Whole width; 0 with a wedge that runs to a point.' },
  'edges.wedgeBackMm': { name: 'End wedge at the back', hint: 'Whole width.' },
  'edges.wedgeDepthMm': { name: 'End wedge, depth', hint: 'Into the sides at the tail.' },
  'edges.wedgePurflingMm': { name: 'End wedge, purfling', hint: 'Along each long edge; 0 for none.' },
  'edges.backStripMm': { name: 'Back strip', hint: 'Width of the strip let into the joint outside; 0 for none.' },
  'edges.backStripDepthMm': { name: 'Back strip, depth', hint: 'Of its channel.' },
  'cutting.plateMarginMm': { name: 'Plates larger by', hint: 'All round the outline.' },
  'cutting.lengthMm': { name: 'Pieces longer by', hint: 'Both ends together.' },
  'cutting.widthMm': { name: 'Pieces wider by', hint: 'Both edges together.' },
  'cutting.thicknessMm': { name: 'Pieces thicker by', hint: 'Both faces together.' },
  'cutting.kerfMm': { name: 'Saw kerf', hint: 'What one cut turns to dust.' },
  'cutting.trimMm': { name: 'Planks trimmed by', hint: 'All round, before anything is laid out.' },
  'cutting.woods': { name: 'Woods', hint: 'In your own words.' },
  'cutting.planks': { name: 'Planks in hand', hint: 'What the parts of one wood may be sawn from.' },
}

/** What an open field means, where nothing is solved for. */
export const OPEN_WORDS: Readonly<Partial<Record<string, string>>> = { 'air.heardHz': 'not yet' }

/** What was heard, as it may be written. */
export const HEARD_EXAMPLE = '104 Hz or G#2 +3'

/** The fields of a plank in hand. */
export const PLANK_WORDS: Record<Exclude<keyof PlankPlan, 'order'>, FieldWords> = {
  role: { name: 'Wood for', hint: 'Which parts may be sawn from it.' },
  lengthMm: { name: 'Length', hint: 'Along the grain.' },
  widthMm: { name: 'Width', hint: 'Across the grain.' },
  thicknessMm: { name: 'Thickness', hint: 'As it is.' },
}

/** The fields of one brace. */
export const BRACE_WORDS: Record<Exclude<keyof BracePlan, 'order' | 'from' | 'to'>, FieldWords> = {
  plate: { name: 'Plate', hint: 'What it is glued to.' },
  kind: { name: 'Kind', hint: 'What the shop calls it.' },
  twin: { name: 'Twin', hint: 'The same once more on the other side.' },
  widthMm: { name: 'Width', hint: 'Of the gluing face.' },
  heightMm: { name: 'Height', hint: 'Over the plate, where it is not tapered.' },
  underside: { name: 'Gluing face', hint: 'What it is shaped to.' },
  archRadiusMm: { name: 'Radius of its arch', hint: 'Where the arch is its own.' },
  lapped: { name: 'Crossings', hint: 'Lapped by half where it crosses another lapped one.' },
}

/** The fields of one end of a brace. */
export const BRACE_END_WORDS: Record<keyof BraceEndPlan, FieldWords> = {
  stops: { name: 'Ends', hint: 'Where the brace stops.' },
  side: { name: 'Side', hint: 'Of the rim.' },
  xMm: { name: 'From the tail', hint: 'Along the centreline.' },
  yMm: { name: 'Across', hint: 'From the centreline, the bass side negative.' },
  braceId: { name: 'At the brace', hint: 'The one it stops at.' },
  letInMm: { name: 'Let in', hint: 'Into a pocket of the lining, from its inner edge toward the side.' },
  taper: { name: 'Runs out', hint: 'How its height ends.' },
  taperMm: { name: 'Over', hint: 'Length of the taper, from the tip.' },
  endHeightMm: { name: 'Height at the end', hint: 'What is left of it at the tip.' },
}
