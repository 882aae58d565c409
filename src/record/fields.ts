import type { PlanField } from '../core/planFields.ts'
import { BOX_RANGES } from './boxFields.ts'
import { body, dome, type FieldRange, plain, thin } from './fieldRange.ts'
import { NECK_FIELDS } from './neckFields.ts'

// Common practice, drawn wide: from a soprano ukulele to a large acoustic bass. No published source.
export const FIELDS = {
  handed: { type: 'choice' },
  'outline.lengthMm': { ...body(120, 800), open: true },
  'outline.kind': { type: 'choice' },
  'outline.pieces': { type: 'whole' },
  'outline.keyWidths.lowerBoutMm': body(80, 600),
  'outline.keyWidths.lowerBoutAtMm': body(10, 600),
  'outline.keyWidths.waistMm': body(50, 500),
  'outline.keyWidths.waistAtMm': body(20, 700),
  'outline.keyWidths.upperBoutMm': body(60, 500),
  'outline.keyWidths.upperBoutAtMm': body(30, 780),
  'outline.keyWidths.tailRadiusMm': { ...body(40, 5000), open: true, flat: true },
  'outline.keyWidths.neckFlatMm': body(0, 150),
  'outline.keyWidths.neckRadiusMm': { ...body(30, 5000), open: true, flat: true },
  'outline.halfWidths.rows': { type: 'whole' },
  'outline.halfWidths.tailRows': { type: 'whole' },
  'outline.halfWidths.neckRows': { type: 'whole' },
  'outline.halfWidths.readToMm': thin(0.01, 3),
  'outline.halfWidths.tailRadiusMm': { ...body(40, 5000), open: true, flat: true },
  'outline.halfWidths.neckFlatMm': body(0, 150),
  'outline.halfWidths.neckRadiusMm': { ...body(30, 5000), open: true, flat: true },
  'outline.drawnPath': { type: 'whole' },
  'outline.cutaway.form': { type: 'choice' },
  'outline.cutaway.leavesAtMm': body(60, 790),
  'outline.cutaway.hornRadiusMm': body(8, 300),
  'outline.cutaway.hollowRadiusMm': body(15, 2000),
  'outline.cutaway.meetsNeckAtMm': body(8, 120),
  'rim.depthAtTailMm': body(20, 250),
  'rim.depthAtNeckMm': body(20, 250),
  'rim.sideThicknessMm': thin(0.8, 6),
  'rim.topAllowanceMm': thin(0, 15),
  'rim.backAllowanceMm': thin(0, 25),
  'rim.trimEachEndMm': body(0, 80),
  'rim.stationStepMm': { ...body(2, 20), open: true },
  'rim.method': { type: 'choice' },
  'rim.firstLeavesTopMm': thin(0, 5),
  'rim.firstLeavesBackMm': thin(0, 5),
  'back.form': { type: 'choice' },
  'back.radiusMm': dome(500, 60000),
  'top.form': { type: 'choice' },
  'top.radiusMm': dome(500, 60000),
  'top.flatFromMm': body(60, 790),
  'top.flatSlope': { type: 'choice' },
  'top.flatSlopeDeg': { type: 'angle', minDeg: -3, maxDeg: 6 },
  'top.riseAtSaddleMm': thin(0, 15),
  'plates.topMm': thin(0.8, 8),
  'plates.backMm': thin(0.8, 8),
  'blocks.tail.widthMm': body(15, 200),
  'blocks.tail.thicknessMm': body(5, 80),
  'blocks.neck.widthMm': body(15, 200),
  'blocks.neck.thicknessMm': body(5, 120),
  'linings.top.kind': { type: 'choice' },
  'linings.top.widthMm': thin(1, 30),
  'linings.top.heightMm': body(3, 60),
  'linings.back.kind': { type: 'choice' },
  'linings.back.widthMm': thin(1, 30),
  'linings.back.heightMm': body(3, 60),
  'linings.wastePercent': plain('percent', 0, 100),
  'binding.heightMm': thin(0, 15),
  'binding.thicknessMm': thin(0, 6),
  'binding.topPurflingMm': thin(0, 10),
  'binding.backPurflingMm': thin(0, 10),
  'sideBraces.form': { type: 'choice' },
  'sideBraces.atMm': { type: 'whole' },
  'sideBraces.spacingMm': body(30, 400),
  'sideBraces.widthMm': body(2, 40),
  'sideBraces.thicknessMm': thin(0.2, 15),
  'sideBraces.ends': { type: 'choice' },
  'caul.spanMm': body(20, 600),
  'caul.widthMm': body(5, 120),
  'caul.heightMm': thin(2, 60),
  'caul.modulusGPa': plain('gigapascal', 1, 220),
  'caul.forceN': plain('newton', 1, 3000),
  ...BOX_RANGES,
  ...NECK_FIELDS,
  'soundhole.centreMm': body(40, 780),
  'soundhole.radiusMm': body(10, 100),
  'soundhole.cutterMm': thin(0.5, 13),
  'rosette.rings': { type: 'whole' },
  'rosette.inlayMm': thin(0.2, 6),
  'rosette.standsProudMm': thin(0, 3),
  'rosette.cutterMm': thin(0.3, 13),
  'rosette.passOverlapMm': thin(0, 3),
  'rosette.gapMarginMm': body(0, 20),
} as const satisfies Record<PlanField, FieldRange>

/** Ranges inside the fields that are replaced whole. */
export const PIECE_RANGES = {
  radiusMm: { ...body(5, 20000), open: true },
  sweepDeg: { type: 'angle', minDeg: 0, maxDeg: 200 },
  lengthMm: { ...body(0, 600), open: true },
} as const satisfies Record<string, FieldRange>

export const RING_RANGES = {
  innerRadiusMm: body(5, 150),
  outerRadiusMm: body(5, 160),
  gapMm: { ...body(0, 200), open: true },
  tileCount: { type: 'count', min: 1, max: 400, open: true },
} as const satisfies Record<string, FieldRange>

export const READING_RANGES = {
  fromTailMm: body(0, 800),
  halfWidthMm: body(0, 400),
} as const satisfies Record<string, FieldRange>

export const SIDE_BRACE_RANGE = body(1, 1500) satisfies FieldRange

export const FIXTURE_RANGES = {
  boardRadiusMm: body(20, 20000),
  dishRadiusMm: dome(500, 60000),
  dishDiameterMm: body(100, 1500),
  insetMm: thin(0, 30),
} as const satisfies Record<string, FieldRange>

export const MOST_FIXTURES = 200
export const MOST_PIECES = 24
export const MOST_READINGS = 120
export const MOST_END_READINGS = 24
export const MOST_SIDE_BRACES = 24
/** Strokes of one half of a drawn outline. */
export const MOST_STROKES = 4000
export const MOST_RINGS = 12
