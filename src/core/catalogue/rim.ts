import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, BEVEL_RAD, BLANK_WIDTH, DEPTH, LINING_PROUD, roundTheRim } from './about.ts'
import { BACK, BOTH, BOTH_STATIONS, CUT, OUTLINE, STATIONS, STEP, THICK, TOP } from './hangsOn.ts'

const FIRST = ['rim.firstLeavesTopMm', 'rim.firstLeavesBackMm'] as const satisfies readonly PlanField[]
const TOP_LINING = ['linings.top.widthMm'] as const satisfies readonly PlanField[]
const BACK_LINING = ['linings.back.widthMm'] as const satisfies readonly PlanField[]

type RowName = Extract<NumberKey, `places[].${string}`> extends `places[].${infer Name}` ? Name : never

/** The columns of a list of rows round the rim, by what its places hang on. */
const rowsOf = (at: readonly PlanField[]): Record<RowName, About> => {
  const depth: About = about('bodyLength', [...at, ...TOP, ...BACK], {
    tolerance: DEPTH,
    measured: roundTheRim('rule'),
  })
  const bevel = { tolerance: BEVEL_RAD, measured: roundTheRim('bevelGauge') } as const
  const proud = { tolerance: LINING_PROUD, measured: roundTheRim('straightedge') } as const
  return {
    alongOuterMm: about('bodyLength', at),
    alongBlankMm: about('bodyLength', [...at, ...THICK]),
    xMm: about('bodyLength', at),
    yMm: about('bodyLength', at),
    topEdgeMm: about('thickness', [...at, ...TOP]),
    backEdgeMm: about('bodyLength', [...at, ...BACK]),
    depthMm: depth,
    topBevelRad: about('angle', [...at, ...TOP], bevel),
    backBevelRad: about('angle', [...at, ...BACK], bevel),
    // The straight edge stands over the highest station, which no cutaway reaches.
    cutWidthMm: about('bodyLength', [...new Set([...at, ...STEP, ...CUT])], {
      standing: 'numeric',
      tolerance: BLANK_WIDTH,
      measured: roundTheRim('rule'),
    }),
    firstDepthMm: { ...depth, hangsOn: [...depth.hangsOn, ...FIRST] },
    topProudOuterMm: about('thickness', [...at, ...TOP, ...THICK, ...TOP_LINING], proud),
    topProudInnerMm: about('thickness', [...at, ...TOP, ...THICK, ...TOP_LINING], proud),
    backProudOuterMm: about('thickness', [...at, ...BACK, ...THICK, ...BACK_LINING], proud),
    backProudInnerMm: about('thickness', [...at, ...BACK, ...THICK, ...BACK_LINING], proud),
  }
}

type List = 'rim' | 'trebleRim' | 'places' | 'treblePlaces'
const under = <L extends List>(list: L, rows: Record<RowName, About>) =>
  Object.fromEntries(Object.entries(rows).map(([name, row]) => [`${list}[].${name}`, row])) as Record<
    `${L}[].${RowName}`,
    About
  >

export const RIM_ABOUT = {
  ...under('rim', rowsOf(STATIONS)),
  ...under('trebleRim', rowsOf(BOTH_STATIONS)),
  'trebleRim[].blank': about('count', BOTH_STATIONS),
  ...under('places', rowsOf(OUTLINE)),
  ...under('treblePlaces', rowsOf(BOTH)),
} satisfies Partial<Record<NumberKey, About>>
