import type { NumberKey } from './numbers.ts'
import { KEY_WIDTH_FIELDS, type PlanField } from './plan.ts'
import type { Quantity } from './quantity.ts'

/** What is known about a number besides its value. Stage sheets, tolerances, help and the list of checks are views of this table. */
export interface About {
  readonly quantity: Quantity
  /** exact: closed form; numeric: found to a stated tolerance; estimate: every place that shows it says so. */
  readonly standing: 'exact' | 'numeric' | 'estimate'
  readonly source: 'published' | 'derived' | 'practice' | 'memory'
  /** The fields of the plan whose change can move it. */
  readonly hangsOn: readonly PlanField[]
  /** Starting tolerance, mm or rad: common practice. null: none is printed until the shop says one. */
  readonly tolerance: number | null
  /** How it is measured at the bench; null: it is computed only. */
  readonly measured: {
    readonly tool: Tool
    readonly where: 'onePlace' | 'roundTheRim'
    readonly defines: PlanField | null
  } | null
}

export const TOOLS = [
  'rule',
  'tape',
  'caliper',
  'thicknessCaliper',
  'depthGauge',
  'straightedge',
  'bevelGauge',
  'contourBoard',
  'dividers',
] as const
export type Tool = (typeof TOOLS)[number]

const OUTLINE = [
  'outline.lengthMm',
  'outline.kind',
  'outline.pieces',
  ...KEY_WIDTH_FIELDS,
] as const satisfies readonly PlanField[]
/** The length of the body hangs on the chain where it is left open, else on its own field. */
const LENGTH = ['outline.lengthMm', 'outline.kind', 'outline.pieces'] as const satisfies readonly PlanField[]
const STATIONS = [...OUTLINE, 'rim.stationStepMm'] as const
const DEPTHS = ['rim.depthAtTailMm', 'rim.depthAtNeckMm'] as const satisfies readonly PlanField[]
const BACK = [...DEPTHS, 'back.form', 'back.radiusMm'] as const satisfies readonly PlanField[]
const TOP = ['top.form', 'top.radiusMm', 'top.flatFromMm', 'top.flatSlopeDeg'] as const satisfies readonly PlanField[]
const PLATE = [
  ...TOP,
  'top.riseAtSaddleMm',
  'scale.lengthMm',
  'scale.jointFret',
] as const satisfies readonly PlanField[]
const REFERENCE = [...TOP, 'rim.topAllowanceMm'] as const satisfies readonly PlanField[]
const CUT = [...BACK, ...REFERENCE, 'rim.backAllowanceMm'] as const satisfies readonly PlanField[]
const THICK = ['rim.sideThicknessMm'] as const satisfies readonly PlanField[]
const BOARD = ['board.overBodyMm', 'board.widthAtJointMm', 'board.widthAtEndMm'] as const satisfies readonly PlanField[]
const RING = ['rosette.rings'] as const satisfies readonly PlanField[]
const HIDDEN = [...LENGTH, ...BOARD, 'soundhole.centreMm', ...RING] as const satisfies readonly PlanField[]
const GAP = [...HIDDEN, 'rosette.gapMarginMm'] as const satisfies readonly PlanField[]
const block = (end: 'tail' | 'neck') => {
  const width = [`blocks.${end}.widthMm`] as const
  const shape = [...OUTLINE, ...THICK, ...width] as const
  const thickness = `blocks.${end}.thicknessMm` as const
  // The tail block's face never reaches the flat of the upper bout; the faces inside can.
  const faceTop = end === 'tail' ? [...LENGTH, 'top.form' as const, 'top.radiusMm' as const] : [...OUTLINE, ...TOP]
  const faceHeight = [...faceTop, ...THICK, ...BACK]
  const insideHeight = [...OUTLINE, ...THICK, ...TOP, ...BACK, thickness] as const
  const topSlope = [...OUTLINE, ...THICK, ...TOP, thickness] as const
  const backSlope = [...LENGTH, ...THICK, ...BACK, thickness] as const
  return { width, shape, faceHeight, insideHeight, topSlope, backSlope }
}
const TAIL = block('tail')
const NECK = block('neck')

type Measured = NonNullable<About['measured']>
const onePlace = (tool: Tool, defines: PlanField | null = null): Measured => ({ tool, where: 'onePlace', defines })
const roundTheRim = (tool: Tool): Measured => ({ tool, where: 'roundTheRim', defines: null })

const about = (
  quantity: Quantity,
  hangsOn: readonly PlanField[],
  more: Partial<Omit<About, 'quantity' | 'hangsOn'>> = {},
): About => ({ quantity, hangsOn, standing: 'exact', source: 'derived', tolerance: null, measured: null, ...more })

// Starting tolerances, common practice (no published source), mm unless said.
const DEPTH = 0.5
const SIDE_THICKNESS = 0.1
const BLANK_LENGTH = 1
const BLANK_WIDTH = 0.5
const BEVEL_RAD = (0.3 * Math.PI) / 180
const LIGHT_GAP = 0.1
const CHANNEL_DEPTH = 0.05
const HOLE_RADIUS = 0.25

export const CATALOGUE = {
  'body.lengthMm': about('bodyLength', LENGTH, { tolerance: 0.5, measured: onePlace('rule', 'outline.lengthMm') }),
  'body.halfLengthMm': about('bodyLength', OUTLINE, { tolerance: BLANK_LENGTH, measured: onePlace('tape') }),
  'body.areaMm2': about('area', OUTLINE),
  'body.lowerBoutMm': about('bodyLength', OUTLINE, { tolerance: 1, measured: onePlace('rule') }),
  'body.lowerBoutAtMm': about('bodyLength', OUTLINE, { measured: onePlace('rule') }),
  'body.waistMm': about('bodyLength', OUTLINE, { tolerance: 1, measured: onePlace('rule') }),
  'body.waistAtMm': about('bodyLength', OUTLINE, { measured: onePlace('rule') }),
  'body.upperBoutMm': about('bodyLength', OUTLINE, { tolerance: 1, measured: onePlace('rule') }),
  'body.upperBoutAtMm': about('bodyLength', OUTLINE, { measured: onePlace('rule') }),
  'body.tightestRadiusMm': about('bodyLength', OUTLINE),
  'body.tightestAtMm': about('bodyLength', OUTLINE),
  'pieces[].radiusMm': about('bodyLength', LENGTH, { standing: 'numeric' }),
  'pieces[].sweepRad': about('angle', LENGTH, { standing: 'numeric' }),
  'pieces[].lengthMm': about('bodyLength', LENGTH, { standing: 'numeric' }),
  'sides.thicknessMm': about('thickness', THICK, {
    tolerance: SIDE_THICKNESS,
    measured: onePlace('thicknessCaliper', 'rim.sideThicknessMm'),
  }),
  'sides.depthAtTailMm': about('bodyLength', ['rim.depthAtTailMm'], {
    tolerance: DEPTH,
    measured: onePlace('rule', 'rim.depthAtTailMm'),
  }),
  'sides.depthAtNeckMm': about('bodyLength', ['rim.depthAtNeckMm'], {
    tolerance: DEPTH,
    measured: onePlace('rule', 'rim.depthAtNeckMm'),
  }),
  'sides.depthAtNeckPlanedMm': about('bodyLength', [...OUTLINE, ...TOP, 'rim.depthAtNeckMm'], {
    tolerance: DEPTH,
    measured: onePlace('rule'),
  }),
  'sides.bodyDepthAtTailMm': about('bodyLength', ['rim.depthAtTailMm', 'plates.topMm', 'plates.backMm'], {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'sides.bodyDepthAtNeckMm': about(
    'bodyLength',
    [...OUTLINE, ...TOP, 'rim.depthAtNeckMm', 'plates.topMm', 'plates.backMm'],
    {
      tolerance: DEPTH,
      measured: onePlace('caliper'),
    },
  ),
  'sides.deepestSideMm': about('bodyLength', [...STATIONS, ...TOP, ...BACK], { standing: 'numeric' }),
  'sides.deepestSideAtMm': about('bodyLength', [...STATIONS, ...TOP, ...BACK], { standing: 'numeric' }),
  'sides.deepestInsideMm': about('bodyLength', [...OUTLINE, ...PLATE, ...BACK], { standing: 'numeric' }),
  'sides.deepestInsideAtMm': about('bodyLength', [...OUTLINE, ...PLATE, ...BACK], { standing: 'numeric' }),
  'sides.flatLengthMm': about('bodyLength', [...OUTLINE, ...THICK]),
  'sides.blankLengthMm': about('bodyLength', [...OUTLINE, ...THICK, 'rim.trimEachEndMm'], {
    tolerance: BLANK_LENGTH,
    measured: onePlace('rule'),
  }),
  'sides.blankWidthMm': about('bodyLength', [...STATIONS, ...CUT], {
    standing: 'numeric',
    tolerance: BLANK_WIDTH,
    measured: onePlace('rule'),
  }),
  'sides.referenceMm': about('thickness', [...STATIONS, ...REFERENCE], { standing: 'numeric' }),
  'sides.waistMarkOnBlankMm': about('bodyLength', [...OUTLINE, ...THICK], {
    tolerance: BLANK_LENGTH,
    measured: onePlace('rule'),
  }),
  'sides.waistMarkOnRimMm': about('bodyLength', OUTLINE, { tolerance: BLANK_LENGTH, measured: onePlace('tape') }),
  'sides.stationStepMm': about('bodyLength', STATIONS),
  'rim[].alongOuterMm': about('bodyLength', STATIONS),
  'rim[].alongBlankMm': about('bodyLength', [...STATIONS, ...THICK]),
  'rim[].xMm': about('bodyLength', STATIONS),
  'rim[].yMm': about('bodyLength', STATIONS),
  'rim[].topEdgeMm': about('thickness', [...STATIONS, ...TOP]),
  'rim[].backEdgeMm': about('bodyLength', [...STATIONS, ...BACK]),
  'rim[].depthMm': about('bodyLength', [...STATIONS, ...TOP, ...BACK], {
    tolerance: DEPTH,
    measured: roundTheRim('rule'),
  }),
  'rim[].topBevelRad': about('angle', [...STATIONS, ...TOP], {
    tolerance: BEVEL_RAD,
    measured: roundTheRim('bevelGauge'),
  }),
  'rim[].backBevelRad': about('angle', [...STATIONS, ...BACK], {
    tolerance: BEVEL_RAD,
    measured: roundTheRim('bevelGauge'),
  }),
  'rim[].cutWidthMm': about('bodyLength', [...STATIONS, ...CUT], {
    standing: 'numeric',
    tolerance: BLANK_WIDTH,
    measured: roundTheRim('rule'),
  }),
  'places[].alongOuterMm': about('bodyLength', OUTLINE),
  'places[].alongBlankMm': about('bodyLength', [...OUTLINE, ...THICK]),
  'places[].xMm': about('bodyLength', OUTLINE),
  'places[].yMm': about('bodyLength', OUTLINE),
  'places[].topEdgeMm': about('thickness', [...OUTLINE, ...TOP]),
  'places[].backEdgeMm': about('bodyLength', [...OUTLINE, ...BACK]),
  'places[].depthMm': about('bodyLength', [...OUTLINE, ...TOP, ...BACK], {
    tolerance: DEPTH,
    measured: roundTheRim('rule'),
  }),
  'places[].topBevelRad': about('angle', [...OUTLINE, ...TOP], {
    tolerance: BEVEL_RAD,
    measured: roundTheRim('bevelGauge'),
  }),
  'places[].backBevelRad': about('angle', [...OUTLINE, ...BACK], {
    tolerance: BEVEL_RAD,
    measured: roundTheRim('bevelGauge'),
  }),
  'places[].cutWidthMm': about('bodyLength', [...STATIONS, ...CUT], {
    standing: 'numeric',
    tolerance: BLANK_WIDTH,
    measured: roundTheRim('rule'),
  }),
  'top.radiusMm': about('domeRadius', ['top.form', 'top.radiusMm'], {
    measured: onePlace('straightedge', 'top.radiusMm'),
  }),
  'top.flatFromMm': about('bodyLength', [...LENGTH, 'top.form', 'top.flatFromMm'], {
    measured: onePlace('rule', 'top.flatFromMm'),
  }),
  'top.flatSlopeRad': about('angle', ['top.form', 'top.flatSlopeDeg'], {
    measured: onePlace('bevelGauge', 'top.flatSlopeDeg'),
  }),
  'top.neckEdgeMm': about('thickness', [...OUTLINE, ...TOP], { tolerance: 0.2, measured: onePlace('straightedge') }),
  'top.riseAtSaddleMm': about('thickness', ['top.form', 'top.riseAtSaddleMm'], {
    tolerance: 0.3,
    measured: onePlace('straightedge', 'top.riseAtSaddleMm'),
  }),
  'top.heightAtSaddleMm': about('thickness', [...OUTLINE, ...PLATE]),
  'top.gapAcrossLowerBoutMm': about('thickness', [...OUTLINE, ...PLATE], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'top.gapAcrossWaistMm': about('thickness', [...OUTLINE, ...PLATE], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'top.gapAcrossUpperBoutMm': about('thickness', [...OUTLINE, ...PLATE], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'top.gapAlongMm': about('thickness', [...OUTLINE, ...PLATE], { measured: onePlace('straightedge') }),
  'back.radiusMm': about('domeRadius', ['back.form', 'back.radiusMm'], {
    measured: onePlace('straightedge', 'back.radiusMm'),
  }),
  'back.axisAtMm': about('bodyLength', [...LENGTH, ...BACK]),
  'back.lowestAtMm': about('bodyLength', [...LENGTH, ...BACK]),
  'back.lowestUnderRimPlaneMm': about('bodyLength', [...LENGTH, ...BACK]),
  'back.gapAcrossLowerBoutMm': about('thickness', [...OUTLINE, ...BACK], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'back.gapAcrossWaistMm': about('thickness', [...OUTLINE, ...BACK], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'back.gapAcrossUpperBoutMm': about('thickness', [...OUTLINE, ...BACK], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'back.gapAlongMm': about('thickness', [...LENGTH, ...BACK], { measured: onePlace('straightedge') }),
  'blocks.tail.widthMm': about('bodyLength', TAIL.width, {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.tail.widthMm'),
  }),
  'blocks.tail.thicknessMm': about('bodyLength', ['blocks.tail.thicknessMm'], {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.tail.thicknessMm'),
  }),
  'blocks.tail.contourRadiusMm': about('bodyLength', TAIL.shape, {
    standing: 'numeric',
    measured: onePlace('contourBoard'),
  }),
  'blocks.tail.contourRiseMm': about('thickness', TAIL.shape, {
    standing: 'numeric',
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'blocks.tail.contourGapMm': about('thickness', TAIL.shape, { standing: 'numeric' }),
  'blocks.tail.contour[].acrossMm': about('bodyLength', TAIL.shape),
  'blocks.tail.contour[].fallsBackMm': about('thickness', TAIL.shape, { standing: 'numeric' }),
  'blocks.tail.heightAtFaceMm': about('bodyLength', TAIL.faceHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.tail.heightInsideMm': about('bodyLength', TAIL.insideHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.tail.topSlopeRad': about('angle', TAIL.topSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.tail.backSlopeRad': about('angle', TAIL.backSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.neck.widthMm': about('bodyLength', NECK.width, {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.neck.widthMm'),
  }),
  'blocks.neck.thicknessMm': about('bodyLength', ['blocks.neck.thicknessMm'], {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.neck.thicknessMm'),
  }),
  'blocks.neck.contourRadiusMm': about('bodyLength', NECK.shape, {
    standing: 'numeric',
    measured: onePlace('contourBoard'),
  }),
  'blocks.neck.contourRiseMm': about('thickness', NECK.shape, {
    standing: 'numeric',
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'blocks.neck.contourGapMm': about('thickness', NECK.shape, { standing: 'numeric' }),
  'blocks.neck.contour[].acrossMm': about('bodyLength', NECK.shape),
  'blocks.neck.contour[].fallsBackMm': about('thickness', NECK.shape, { standing: 'numeric' }),
  'blocks.neck.heightAtFaceMm': about('bodyLength', NECK.faceHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.neck.heightInsideMm': about('bodyLength', NECK.insideHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.neck.topSlopeRad': about('angle', NECK.topSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.neck.backSlopeRad': about('angle', NECK.backSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'scale.jointToSaddleMm': about('bodyLength', ['scale.lengthMm', 'scale.jointFret'], {
    source: 'published',
    tolerance: 0.3,
    measured: onePlace('rule'),
  }),
  'scale.saddleLineMm': about('bodyLength', [...LENGTH, 'scale.lengthMm', 'scale.jointFret'], { source: 'published' }),
  'scale.boardEndMm': about('bodyLength', [...LENGTH, 'board.overBodyMm'], { measured: onePlace('rule') }),
  'soundhole.centreMm': about('bodyLength', ['soundhole.centreMm'], {
    tolerance: 0.5,
    measured: onePlace('rule', 'soundhole.centreMm'),
  }),
  'soundhole.radiusMm': about('bodyLength', ['soundhole.radiusMm'], {
    tolerance: HOLE_RADIUS,
    measured: onePlace('dividers', 'soundhole.radiusMm'),
  }),
  'soundhole.cutterCircleMm': about('bodyLength', ['soundhole.radiusMm', 'soundhole.cutterMm'], {
    tolerance: HOLE_RADIUS,
    measured: onePlace('caliper'),
  }),
  'soundhole.discMm': about('bodyLength', ['soundhole.radiusMm', 'soundhole.cutterMm']),
  'soundhole.toFirstRingMm': about('thickness', ['soundhole.radiusMm', ...RING]),
  'soundhole.centreToBoardEndMm': about('bodyLength', [...LENGTH, 'board.overBodyMm', 'soundhole.centreMm'], {
    measured: onePlace('rule'),
  }),
  'rosette.channelDepthMm': about('thickness', ['rosette.inlayMm', 'rosette.standsProudMm'], {
    tolerance: CHANNEL_DEPTH,
    measured: onePlace('depthGauge'),
  }),
  'rosette.rings[].innerRadiusMm': about('bodyLength', RING, { tolerance: 0.1, measured: onePlace('dividers') }),
  'rosette.rings[].outerRadiusMm': about('bodyLength', RING, { tolerance: 0.1, measured: onePlace('dividers') }),
  'rosette.rings[].widthMm': about('thickness', RING, { tolerance: 0.05, measured: onePlace('caliper') }),
  'rosette.rings[].hiddenRad': about('angle', HIDDEN),
  'rosette.rings[].hiddenMm': about('bodyLength', HIDDEN),
  'rosette.rings[].gapRad': about('angle', GAP),
  'rosette.rings[].gapMm': about('bodyLength', GAP, { measured: onePlace('rule') }),
  'rosette.rings[].stripLengthMm': about('bodyLength', GAP, { measured: onePlace('tape') }),
  'rosette.rings[].visibleRad': about('angle', HIDDEN),
  'rosette.rings[].innerCutterCircleMm': about('bodyLength', [...RING, 'rosette.cutterMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper'),
  }),
  'rosette.rings[].outerCutterCircleMm': about('bodyLength', [...RING, 'rosette.cutterMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper'),
  }),
  'rosette.rings[].passes': about('count', [...RING, 'rosette.cutterMm', 'rosette.passOverlapMm']),
  'rosette.rings[].tileRad': about('angle', GAP),
  'rosette.rings[].tileLengthMm': about('bodyLength', GAP),
} as const satisfies Record<NumberKey, About>

export type { NumberKey } from './numbers.ts'
export const NUMBER_KEYS = Object.keys(CATALOGUE) as NumberKey[]
export const aboutNumber = (key: NumberKey): About => CATALOGUE[key]
