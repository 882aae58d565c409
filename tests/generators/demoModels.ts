import type { OutlinePiece, Plan, RingPlan } from '../../src/core/plan.ts'

/** The models the program comes with. Their figures are invented, coherent and closed; no maker's plan was copied. */
export interface DemoModel {
  readonly file: string
  readonly name: string
  readonly family: 'steelString' | 'nylonString' | 'small'
  readonly plan: Plan
}

const arc = (radiusMm: number, sweepDeg: number): OutlinePiece => ({
  kind: 'arc',
  bend: radiusMm < 0 ? 'concave' : 'convex',
  radiusMm: Math.abs(radiusMm),
  sweepDeg,
})
const straight = (lengthMm: number): OutlinePiece => ({ kind: 'straight', lengthMm })

/** Rings from the inside outward, under fixed ids. */
const rings = (...list: Omit<RingPlan, 'order'>[]): Record<string, RingPlan> =>
  Object.fromEntries(
    list.map((ring, i) => [`5ee00000-0000-4000-8000-00000000000${i + 1}`, { order: 'gmt'[i] ?? 'z', ...ring }]),
  )

export const STEEL_STRING: DemoModel = {
  file: 'steelString',
  name: 'Meadow fourteen-fret',
  family: 'steelString',
  plan: {
    outline: {
      lengthMm: 496,
      kind: 'compassArcs',
      pieces: [
        arc(950, 4.2924098),
        arc(135, 85.7075902),
        arc(120, 47.1209334),
        straight(17.864066),
        arc(-80, 71.5935367),
        straight(15.484941),
        arc(138, 24.4726033),
        arc(95, 86.886104),
        arc(500, 3.113896),
        straight(28),
      ],
      keyWidths: {
        lowerBoutMm: 392,
        lowerBoutAtMm: 137,
        waistMm: 238,
        waistAtMm: 296,
        upperBoutMm: 290,
        upperBoutAtMm: 400,
        tailRadiusMm: 950,
        neckFlatMm: 56,
        neckRadiusMm: null,
      },
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
    top: { form: 'flatUpperBout', radiusMm: 8500, flatFromMm: 406, flatSlopeDeg: 1.312, riseAtSaddleMm: 3.5 },
    plates: { topMm: 2.8, backMm: 2.5 },
    blocks: { tail: { widthMm: 76, thicknessMm: 22 }, neck: { widthMm: 80, thicknessMm: 36 } },
    scale: { lengthMm: 645, jointFret: 14 },
    board: { overBodyMm: 90.15, widthAtJointMm: 56.2, widthAtEndMm: 59.28 },
    soundhole: { centreMm: 356, radiusMm: 50, cutterMm: 6 },
    rosette: {
      rings: rings(
        { innerRadiusMm: 56, outerRadiusMm: 57.5, join: 'openUnderBoard', gapMm: null, tileCount: null },
        { innerRadiusMm: 58.5, outerRadiusMm: 62.5, join: 'openUnderBoard', gapMm: null, tileCount: 48 },
        { innerRadiusMm: 63.5, outerRadiusMm: 65, join: 'openUnderBoard', gapMm: null, tileCount: null },
      ),
      inlayMm: 2,
      standsProudMm: 0.2,
      cutterMm: 1.5,
      passOverlapMm: 0.3,
      gapMarginMm: 4,
    },
  },
}

export const SMALL: DemoModel = {
  file: 'small',
  name: 'Pipit fourteen-fret',
  family: 'small',
  plan: {
    outline: {
      lengthMm: 302,
      kind: 'compassArcs',
      pieces: [
        arc(420, 5.7391705),
        arc(80, 84.2608295),
        arc(84, 39.2767423),
        straight(11.799711),
        arc(-60, 57.9676749),
        straight(11.114418),
        arc(100, 18.6909327),
        arc(58, 87.1694275),
        arc(220, 2.8305725),
        straight(20),
      ],
      keyWidths: {
        lowerBoutMm: 228,
        lowerBoutAtMm: 82,
        waistMm: 148,
        waistAtMm: 182,
        upperBoutMm: 172,
        upperBoutAtMm: 244,
        tailRadiusMm: 420,
        neckFlatMm: 40,
        neckRadiusMm: null,
      },
      treble: 'mirror',
    },
    rim: {
      depthAtTailMm: 74,
      depthAtNeckMm: 64,
      sideThicknessMm: 1.7,
      topAllowanceMm: 1,
      backAllowanceMm: 2,
      trimEachEndMm: 12,
      stationStepMm: null,
    },
    back: { form: 'sphere', radiusMm: 3600 },
    top: { form: 'flatRim', radiusMm: 6000, flatFromMm: 258, flatSlopeDeg: 1, riseAtSaddleMm: 1 },
    plates: { topMm: 1.9, backMm: 1.8 },
    blocks: { tail: { widthMm: 45, thicknessMm: 12 }, neck: { widthMm: 48, thicknessMm: 20 } },
    scale: { lengthMm: 432, jointFret: 14 },
    board: { overBodyMm: 43.7, widthAtJointMm: 45.98, widthAtEndMm: 47.8 },
    soundhole: { centreMm: 223.5, radiusMm: 33, cutterMm: 5 },
    rosette: {
      rings: rings({ innerRadiusMm: 39, outerRadiusMm: 43, join: 'openUnderBoard', gapMm: null, tileCount: null }),
      inlayMm: 1.4,
      standsProudMm: 0.2,
      cutterMm: 2,
      passOverlapMm: 0.5,
      gapMarginMm: 3,
    },
  },
}

export const NYLON_STRING: DemoModel = {
  file: 'nylonString',
  name: 'Evenfall twelve-fret',
  family: 'nylonString',
  plan: {
    outline: {
      lengthMm: 486,
      kind: 'keyWidths',
      pieces: STEEL_STRING.plan.outline.pieces,
      keyWidths: {
        lowerBoutMm: 364,
        lowerBoutAtMm: 102,
        waistMm: 232,
        waistAtMm: 281,
        upperBoutMm: 278,
        upperBoutAtMm: 402,
        tailRadiusMm: 600,
        neckFlatMm: 56,
        neckRadiusMm: null,
      },
      treble: 'mirror',
    },
    rim: {
      depthAtTailMm: 98,
      depthAtNeckMm: 92,
      sideThicknessMm: 1.9,
      topAllowanceMm: 1,
      backAllowanceMm: 3,
      trimEachEndMm: 20,
      stationStepMm: null,
    },
    back: { form: 'sphere', radiusMm: 4600 },
    top: { form: 'flatRim', radiusMm: 6000, flatFromMm: 375, flatSlopeDeg: 0, riseAtSaddleMm: 2.2 },
    plates: { topMm: 2.4, backMm: 2.3 },
    blocks: { tail: { widthMm: 70, thicknessMm: 16 }, neck: { widthMm: 56, thicknessMm: 12 } },
    scale: { lengthMm: 650, jointFret: 12 },
    board: { overBodyMm: 111.09, widthAtJointMm: 62, widthAtEndMm: 65.42 },
    soundhole: { centreMm: 336, radiusMm: 42.5, cutterMm: 6 },
    rosette: {
      rings: rings({ innerRadiusMm: 47, outerRadiusMm: 75, join: 'openUnderBoard', gapMm: null, tileCount: null }),
      inlayMm: 1.8,
      standsProudMm: 0.2,
      cutterMm: 6,
      passOverlapMm: 1,
      gapMarginMm: 3,
    },
  },
}

export const DEMO_MODELS: readonly DemoModel[] = [STEEL_STRING, SMALL, NYLON_STRING]
