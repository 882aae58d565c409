import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, LIGHT_GAP, onePlace, roundTheRim } from './about.ts'
import { BACK, BOTH, LENGTH, OUTLINE, THICK, TOP } from './hangsOn.ts'

type RowName = Extract<NumberKey, `edgePlaces[].${string}`> extends `edgePlaces[].${infer Name}` ? Name : never
type Plate = 'top' | 'back'

const BOUND = ['binding.thicknessMm'] as const satisfies readonly PlanField[]
const HEIGHT = ['binding.heightMm', ...BOUND] as const satisfies readonly PlanField[]
const PURFLINGS = ['binding.topPurflingMm', 'binding.backPurflingMm'] as const satisfies readonly PlanField[]
const TRIM = ['edges.trimMm'] as const satisfies readonly PlanField[]
const purfling = (plate: Plate) => `binding.${plate}PurflingMm` as const

/** The columns of the cuts round the rim, by what its places hang on. */
function rowsOf(at: readonly PlanField[]): Record<RowName, About> {
  const bevel = (plate: Plate) => [...at, ...(plate === 'top' ? TOP : BACK)]
  const cut = { tolerance: LIGHT_GAP, measured: roundTheRim('depthGauge') } as const
  const foot = (plate: Plate) => about('thickness', bevel(plate))
  const bindingOff = (plate: Plate) => about('thickness', [...bevel(plate), ...BOUND])
  const purflingOff = (plate: Plate) => about('thickness', [...bevel(plate), ...BOUND, purfling(plate)])
  const bindingSet = (plate: Plate) => about('thickness', [...bevel(plate), ...HEIGHT], cut)
  const purflingSet = (plate: Plate) =>
    about('thickness', [...bevel(plate), ...BOUND, purfling(plate), 'edges.purflingDepthMm'], cut)
  return {
    alongOuterMm: about('bodyLength', at),
    topBevelRad: about('angle', bevel('top')),
    backBevelRad: about('angle', bevel('back')),
    topFootMm: foot('top'),
    backFootMm: foot('back'),
    topBindingOffMm: bindingOff('top'),
    backBindingOffMm: bindingOff('back'),
    topPurflingOffMm: purflingOff('top'),
    backPurflingOffMm: purflingOff('back'),
    topBindingSetMm: bindingSet('top'),
    backBindingSetMm: bindingSet('back'),
    topPurflingSetMm: purflingSet('top'),
    backPurflingSetMm: purflingSet('back'),
    betweenMm: about('bodyLength', [...at, ...TOP, ...BACK, 'plates.topMm', 'plates.backMm', ...HEIGHT], {
      measured: roundTheRim('caliper'),
    }),
  }
}
const under = <L extends 'edgePlaces' | 'trebleEdgePlaces'>(list: L, rows: Record<RowName, About>) =>
  Object.fromEntries(Object.entries(rows).map(([name, row]) => [`${list}[].${name}`, row])) as Record<
    `${L}[].${RowName}`,
    About
  >

const plateLeft = (plate: Plate) =>
  about('thickness', [`plates.${plate}Mm`, purfling(plate), 'edges.purflingDepthMm'], {
    measured: onePlace('depthGauge'),
  })

const channelWidth = (plate: Plate) =>
  about('thickness', [purfling(plate)], { tolerance: LIGHT_GAP, measured: onePlace('caliper', purfling(plate)) })

const WIDTHS = ['edges.wedgeTopMm', 'edges.wedgeBackMm'] as const satisfies readonly PlanField[]
const FULL = ['rim.depthAtTailMm', 'plates.topMm', 'plates.backMm', ...WIDTHS] as const satisfies readonly PlanField[]
const WEDGE_PURFLING = [...FULL, 'edges.wedgePurflingMm'] as const satisfies readonly PlanField[]
const INTO = [...WIDTHS, 'edges.wedgeDepthMm', ...THICK] as const satisfies readonly PlanField[]
const STRIP = [
  ...LENGTH,
  ...BACK,
  'plates.backMm',
  ...BOUND,
  'edges.backStripMm',
] as const satisfies readonly PlanField[]
const wedgeWidth = { measured: onePlace('caliper') } as const

export const EDGE_ABOUT = {
  'edges.ledgeMm': about('thickness', HEIGHT, {
    tolerance: LIGHT_GAP,
    measured: onePlace('depthGauge', 'binding.heightMm'),
  }),
  'edges.ledgeInMm': about('thickness', BOUND, {
    tolerance: LIGHT_GAP,
    measured: onePlace('depthGauge', 'binding.thicknessMm'),
  }),
  'edges.sideLeftMm': about('thickness', [...THICK, ...BOUND]),
  'edges.topPurflingMm': channelWidth('top'),
  'edges.backPurflingMm': channelWidth('back'),
  'edges.purflingDownMm': about('thickness', [...PURFLINGS, 'edges.purflingDepthMm'], {
    tolerance: LIGHT_GAP,
    measured: onePlace('depthGauge', 'edges.purflingDepthMm'),
  }),
  'edges.topLeftMm': plateLeft('top'),
  'edges.backLeftMm': plateLeft('back'),
  'edges.bindingToBuyMm': about('bodyLength', [...BOTH, ...BOUND, ...TRIM]),
  'edges.purflingToBuyMm': about('bodyLength', [...BOTH, ...BOUND, ...PURFLINGS, ...TRIM]),
  'edges.tightestRadiusMm': about('bodyLength', [...BOTH, ...BOUND]),
  'edges.tightestAtMm': about('bodyLength', [...BOTH, ...BOUND]),
  ...under('edgePlaces', rowsOf(OUTLINE)),
  ...under('trebleEdgePlaces', rowsOf(BOTH)),
  'edgeStrips[].bindingMm': about('bodyLength', [...BOTH, ...BOUND]),
  'edgeStrips[].bindingCutMm': about('bodyLength', [...BOTH, ...BOUND, ...TRIM], { measured: onePlace('tape') }),
  'edgeStrips[].purflingMm': about('bodyLength', [...BOTH, ...BOUND, ...PURFLINGS]),
  'edgeStrips[].purflingCutMm': about('bodyLength', [...BOTH, ...BOUND, ...PURFLINGS, ...TRIM], {
    measured: onePlace('tape'),
  }),
  'edgeStrips[].mitreRad': about('angle', BOTH, { measured: onePlace('bevelGauge') }),
  'endWedge.fullMm': about('bodyLength', FULL, { measured: onePlace('caliper') }),
  'endWedge.betweenMm': about('bodyLength', [...FULL, ...HEIGHT], { measured: onePlace('caliper') }),
  'endWedge.taperRad': about('angle', FULL, { measured: onePlace('bevelGauge') }),
  'endWedge.topMm': about('bodyLength', [...FULL, ...HEIGHT], wedgeWidth),
  'endWedge.backMm': about('bodyLength', [...FULL, ...HEIGHT], wedgeWidth),
  'endWedge.woodTopMm': about('bodyLength', WEDGE_PURFLING, wedgeWidth),
  'endWedge.woodBackMm': about('bodyLength', WEDGE_PURFLING, wedgeWidth),
  'endWedge.intoSideMm': about('thickness', [...WIDTHS, 'edges.wedgeDepthMm'], {
    tolerance: LIGHT_GAP,
    measured: onePlace('depthGauge', 'edges.wedgeDepthMm'),
  }),
  'endWedge.edgeMm': about('thickness', [...WIDTHS, 'edges.wedgePurflingMm'], {
    measured: onePlace('caliper', 'edges.wedgePurflingMm'),
  }),
  'endWedge.purflingMm': about('bodyLength', [...WEDGE_PURFLING, ...HEIGHT]),
  'endWedge.purflingCutMm': about('bodyLength', [...WEDGE_PURFLING, ...HEIGHT, ...TRIM], {
    measured: onePlace('rule'),
  }),
  'endWedge.mitreTopRad': about('angle', WEDGE_PURFLING, { measured: onePlace('bevelGauge') }),
  'endWedge.mitreBackRad': about('angle', WEDGE_PURFLING, { measured: onePlace('bevelGauge') }),
  'endWedge.intoBlockMm': about('thickness', INTO, { measured: onePlace('depthGauge') }),
  'endWedge.blockLeftMm': about('thickness', [...INTO, 'blocks.tail.thicknessMm']),
  'endWedge.besideMm': about('bodyLength', [...WIDTHS, 'blocks.tail.widthMm']),
  'backStrip.widthMm': about('bodyLength', ['edges.backStripMm'], {
    tolerance: LIGHT_GAP,
    measured: onePlace('caliper', 'edges.backStripMm'),
  }),
  'backStrip.downMm': about('thickness', ['edges.backStripMm', 'edges.backStripDepthMm'], {
    tolerance: LIGHT_GAP,
    measured: onePlace('depthGauge', 'edges.backStripDepthMm'),
  }),
  'backStrip.chordMm': about('bodyLength', STRIP, { measured: onePlace('rule') }),
  'backStrip.arcMm': about('bodyLength', STRIP, { standing: 'numeric', measured: onePlace('tape') }),
  'backStrip.cutMm': about('bodyLength', [...STRIP, ...TRIM], { standing: 'numeric', measured: onePlace('tape') }),
  'backStrip.leftMm': about('thickness', ['edges.backStripMm', 'edges.backStripDepthMm', 'plates.backMm'], {
    measured: onePlace('depthGauge'),
  }),
} satisfies Partial<Record<NumberKey, About>>
