import type { Plan } from '../../src/core/plan.ts'
import { SMALL as SMALL_MODEL, STEEL_STRING } from '../generators/demoModels.ts'

/** An invented steel-string body by compass arcs, domed both sides, flat upper bout, three rings. */
export const STEEL: Plan = {
  ...STEEL_STRING.plan,
  top: { ...STEEL_STRING.plan.top, riseAtSaddleMm: 2 },
  soundhole: { centreMm: 356, radiusMm: 50, cutterMm: 3 },
  rosette: {
    rings: {
      a: { order: 'a', innerRadiusMm: 56, outerRadiusMm: 57.5, join: 'openUnderBoard', gapMm: null, tileCount: null },
      b: { order: 'b', innerRadiusMm: 58.5, outerRadiusMm: 62.5, join: 'openUnderBoard', gapMm: null, tileCount: 36 },
      c: { order: 'c', innerRadiusMm: 63.5, outerRadiusMm: 65, join: 'closed', gapMm: null, tileCount: null },
    },
    inlayMm: 2,
    standsProudMm: 0.2,
    cutterMm: 1.5,
    passOverlapMm: 0.3,
    gapMarginMm: 2,
  },
}

/** An invented small body: flat rim with a domed plate, one ring. */
export const SMALL: Plan = {
  ...STEEL,
  outline: {
    ...STEEL.outline,
    lengthMm: 302,
    pieces: SMALL_MODEL.plan.outline.pieces,
  },
  rim: { ...STEEL.rim, depthAtTailMm: 74, depthAtNeckMm: 64, sideThicknessMm: 1.7, topAllowanceMm: 1 },
  back: { form: 'sphere', radiusMm: 3600 },
  top: { form: 'flatRim', radiusMm: 6000, flatFromMm: 240, flatSlope: 'neckSet', flatSlopeDeg: 1, riseAtSaddleMm: 1 },
  plates: { topMm: 1.9, backMm: 1.8 },
  blocks: { tail: { widthMm: 45, thicknessMm: 12 }, neck: { widthMm: 48, thicknessMm: 20 } },
  scale: SMALL_MODEL.plan.scale,
  board: SMALL_MODEL.plan.board,
  frets: SMALL_MODEL.plan.frets,
  strings: SMALL_MODEL.plan.strings,
  setup: SMALL_MODEL.plan.setup,
  bridge: SMALL_MODEL.plan.bridge,
  neck: SMALL_MODEL.plan.neck,
  head: SMALL_MODEL.plan.head,
  soundhole: { centreMm: 223.5, radiusMm: 33, cutterMm: 3 },
  rosette: {
    ...STEEL.rosette,
    rings: {
      a: { order: 'a', innerRadiusMm: 39, outerRadiusMm: 43, join: 'openUnderBoard', gapMm: null, tileCount: null },
    },
  },
}

/** The steel body by key widths, flat top, back arched across only, no ring at all. */
export const BY_KEY_WIDTHS: Plan = {
  ...STEEL,
  outline: { ...STEEL.outline, kind: 'keyWidths' },
  back: { form: 'across', radiusMm: 4600 },
  top: { ...STEEL.top, form: 'flat' },
  rosette: { ...STEEL.rosette, rings: {} },
}

/** The steel-string body with a pointed horn: the treble side is made of two pieces. */
export const CUTAWAY: Plan = {
  ...STEEL_STRING.plan,
  outline: {
    ...STEEL_STRING.plan.outline,
    cutaway: { form: 'pointed', leavesAtMm: 430, hornRadiusMm: 35, hollowRadiusMm: 70, meetsNeckAtMm: 32 },
  },
}
