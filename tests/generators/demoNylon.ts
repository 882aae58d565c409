import { fanBracing, ladderBack } from '../../src/record/patterns/bracings.ts'
import { braced, NYLON_BOX } from './demoBoxes.ts'
import { NYLON_NECK } from './demoNecks.ts'
import type { HalfWidthsPlan, Plan } from '../../src/core/plan.ts'
import { type DemoModel, lining, noCutaway, rings, STEEL_PIECES } from './demoModel.ts'

/** Read from the half template with a rule, to 0.3 mm; the ends read the other way too. */
const EVENFALL_READINGS: HalfWidthsPlan = {
  rows: [
    [20, 117.6],
    [40, 143.9],
    [60, 160.4],
    [80, 171.4],
    [100, 178.2],
    [120, 181.5],
    [140, 181.6],
    [160, 178.1],
    [180, 170.3],
    [200, 157.2],
    [220, 139.2],
    [240, 126.2],
    [260, 118.9],
    [280, 116.1],
    [300, 117.3],
    [320, 122.7],
    [340, 130.1],
    [360, 135.6],
    [380, 138.5],
    [400, 138.8],
    [420, 135.1],
    [440, 126.3],
    [460, 110.5],
  ],
  tailRows: [
    [0.3, 20],
    [1.3, 40],
    [3, 60],
    [5.8, 80],
    [11.7, 100],
  ],
  neckRows: [
    [485.8, 40],
    [484.5, 60],
    [479.3, 80],
    [468.6, 100],
  ],
  readToMm: 0.3,
  tailRadiusMm: 600,
  neckFlatMm: 56,
  neckRadiusMm: null,
}

const UNBRACED: DemoModel = {
  file: 'nylonString',
  id: '0dd0de15-0000-4000-8000-000000000003',
  name: 'Evenfall twelve-fret',
  family: 'nylonString',
  plan: {
    handed: 'right',
    outline: {
      lengthMm: 486,
      kind: 'halfWidths',
      pieces: STEEL_PIECES,
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
      halfWidths: EVENFALL_READINGS,
      drawnPath: null,
      cutaway: noCutaway(440, 32, 65, 34),
    },
    rim: {
      depthAtTailMm: 98,
      depthAtNeckMm: 92,
      sideThicknessMm: 1.9,
      topAllowanceMm: 1,
      backAllowanceMm: 3,
      trimEachEndMm: 20,
      stationStepMm: null,
      method: 'beforeBending',
      firstLeavesTopMm: 0,
      firstLeavesBackMm: 0.3,
    },
    back: { form: 'sphere', radiusMm: 4600 },
    top: {
      form: 'flatRim',
      radiusMm: 6000,
      flatFromMm: 375,
      flatSlope: 'neckSet',
      flatSlopeDeg: 0,
      riseAtSaddleMm: 2.2,
    },
    plates: { topMm: 2.4, backMm: 2.3 },
    blocks: { tail: { widthMm: 70, thicknessMm: 16 }, neck: { widthMm: 56, thicknessMm: 12 } },
    linings: { top: lining('singleBlocks', 6, 12), back: lining('solidBent', 5, 15), wastePercent: 15 },
    binding: { heightMm: 5.5, thicknessMm: 1.8, topPurflingMm: 1.5, backPurflingMm: 0 },
    sideBraces: {
      form: 'wood',
      atMm: [150, 330, 560],
      spacingMm: 110,
      widthMm: 8,
      thicknessMm: 3,
      ends: 'betweenLinings',
    },
    caul: { spanMm: 84, widthMm: 20, heightMm: 11, modulusGPa: 11, forceN: 250 },
    ...NYLON_BOX,
    ...NYLON_NECK,
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

export const NYLON_STRING: DemoModel = { ...UNBRACED, plan: braced(UNBRACED.plan, fanBracing, ladderBack) }

/** The same body by its key widths. */
export const BY_KEY_WIDTHS: Plan = {
  ...NYLON_STRING.plan,
  outline: { ...NYLON_STRING.plan.outline, kind: 'keyWidths' },
}
