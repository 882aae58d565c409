import type { BOX_FIELDS } from '../core/planFields.ts'
import { body, dome, type FieldRange, plain, thin } from './fieldRange.ts'

/** Braces, air and edges. Common practice, drawn wide: from a soprano ukulele to a large acoustic bass. No published source. */
export const BOX_RANGES = {
  'bracing.braces': { type: 'whole' },
  'bracing.blankEndMm': body(0, 80),
  'bracing.blankHeightMm': thin(0, 20),
  'bracing.blankWidthMm': thin(0, 10),
  'bracing.crossPatchMm': body(0, 120),
  'bracing.crossPatchThicknessMm': thin(0.1, 6),
  'bracing.holeRingMm': body(0, 60),
  'bracing.holeRingSetBackMm': thin(0, 20),
  'bracing.holeRingThicknessMm': thin(0.3, 6),
  'bracing.stripWidthMm': body(0, 60),
  'bracing.stripThicknessMm': thin(0.3, 8),
  'air.temperatureC': plain('celsius', 0, 40),
  'air.holeChangeMm': thin(-20, 20),
  'air.depthChangeMm': thin(-40, 40),
  'air.heardHz': { ...plain('hertz', 20, 600), open: true },
  'edges.purflingDepthMm': thin(0.3, 6),
  'edges.trimMm': body(0, 80),
  'edges.wedgeTopMm': body(0, 80),
  'edges.wedgeBackMm': body(0, 80),
  'edges.wedgeDepthMm': thin(0.3, 20),
  'edges.wedgePurflingMm': thin(0, 5),
  'edges.backStripMm': body(0, 40),
  'edges.backStripDepthMm': thin(0.3, 6),
  'cutting.plateMarginMm': body(0, 60),
  'cutting.lengthMm': body(0, 150),
  'cutting.widthMm': thin(0, 40),
  'cutting.thicknessMm': thin(0, 15),
  'cutting.kerfMm': thin(0, 8),
  'cutting.trimMm': thin(0, 60),
  'cutting.woods': { type: 'whole' },
  'cutting.planks': { type: 'whole' },
} as const satisfies Record<(typeof BOX_FIELDS)[number], FieldRange>

/** Of one brace, and of either end of it. */
export const BRACE_RANGES = {
  widthMm: thin(1, 60),
  heightMm: thin(1, 50),
  archRadiusMm: dome(500, 60000),
} as const satisfies Record<string, FieldRange>
export const BRACE_END_RANGES = {
  xMm: body(-20, 820),
  yMm: body(-320, 320),
  letInMm: thin(0, 15),
  taperMm: body(0, 300),
  endHeightMm: thin(0, 40),
} as const satisfies Record<string, FieldRange>

/** Of a plank in hand. */
export const PLANK_RANGES = {
  lengthMm: body(20, 6000),
  widthMm: body(10, 1500),
  thicknessMm: body(0.5, 200),
} as const satisfies Record<string, FieldRange>

export const MOST_BRACES = 40
export const MOST_PLANKS = 40
/** Letters in the name of a wood. */
export const LONGEST_WOOD = 80
