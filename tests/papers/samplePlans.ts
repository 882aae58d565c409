import type { OutlinePiece, Plan } from '../../src/core/plan.ts'

const arc = (bend: 'convex' | 'concave', radiusMm: number, sweepDeg: number): OutlinePiece => ({
  kind: 'arc',
  bend,
  radiusMm,
  sweepDeg,
})
const straight = (lengthMm: number): OutlinePiece => ({ kind: 'straight', lengthMm })

const KEY_WIDTHS = {
  lowerBoutMm: 392,
  lowerBoutAtMm: 137,
  waistMm: 238,
  waistAtMm: 296,
  upperBoutMm: 290,
  upperBoutAtMm: 400,
  tailRadiusMm: 950,
  neckFlatMm: 56,
  neckRadiusMm: null,
} as const

/** An invented steel-string body by compass arcs, domed both sides, flat upper bout, three rings. */
export const STEEL: Plan = {
  outline: {
    lengthMm: 496,
    kind: 'compassArcs',
    pieces: [
      arc('convex', 950, 4.2924098),
      arc('convex', 135, 85.7075902),
      arc('convex', 120, 47.1209334),
      straight(17.864066),
      arc('concave', 80, 71.5935367),
      straight(15.484941),
      arc('convex', 138, 24.4726033),
      arc('convex', 95, 86.886104),
      arc('convex', 500, 3.113896),
      straight(28),
    ],
    keyWidths: KEY_WIDTHS,
    treble: 'mirror',
  },
  rim: {
    depthAtTailMm: 106,
    depthAtNeckMm: 90,
    sideThicknessMm: 2.2,
    topAllowanceMm: 2,
    backAllowanceMm: 3,
    trimEachEndMm: 15,
    stationStepMm: null,
  },
  back: { form: 'sphere', radiusMm: 4600 },
  top: { form: 'flatUpperBout', radiusMm: 8500, flatFromMm: 406, flatSlopeDeg: 1.312, riseAtSaddleMm: 2 },
  plates: { topMm: 2.8, backMm: 2.5 },
  blocks: { tail: { widthMm: 76, thicknessMm: 22 }, neck: { widthMm: 80, thicknessMm: 36 } },
  scale: { lengthMm: 645, jointFret: 14 },
  board: { overBodyMm: 90.2, widthAtJointMm: 56, widthAtEndMm: 57.5 },
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
    pieces: [
      arc('convex', 420, 5.7391705),
      arc('convex', 80, 84.2608295),
      arc('convex', 84, 39.2767423),
      straight(11.799711),
      arc('concave', 60, 57.9676749),
      straight(11.114418),
      arc('convex', 100, 18.6909327),
      arc('convex', 58, 87.1694275),
      arc('convex', 220, 2.8305725),
      straight(20),
    ],
  },
  rim: { ...STEEL.rim, depthAtTailMm: 74, depthAtNeckMm: 64, sideThicknessMm: 1.7, topAllowanceMm: 1 },
  back: { form: 'sphere', radiusMm: 3600 },
  top: { form: 'flatRim', radiusMm: 6000, flatFromMm: 240, flatSlopeDeg: 1, riseAtSaddleMm: 1 },
  plates: { topMm: 1.9, backMm: 1.8 },
  blocks: { tail: { widthMm: 45, thicknessMm: 12 }, neck: { widthMm: 48, thicknessMm: 20 } },
  scale: { lengthMm: 432, jointFret: 14 },
  board: { overBodyMm: 43, widthAtJointMm: 46, widthAtEndMm: 48 },
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
