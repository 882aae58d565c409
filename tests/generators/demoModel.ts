import type { HalfWidthsPlan, LiningPlan, OutlinePiece, Plan, RingPlan } from '../../src/core/plan.ts'

/** The models the program comes with. Their figures are invented, coherent and closed; no maker's plan was copied. */
export interface DemoModel {
  readonly file: string
  readonly id: string
  readonly name: string
  readonly family: 'steelString' | 'nylonString' | 'small'
  readonly plan: Plan
}

export const arc = (radiusMm: number, sweepDeg: number): OutlinePiece => ({
  kind: 'arc',
  bend: radiusMm < 0 ? 'concave' : 'convex',
  radiusMm: Math.abs(radiusMm),
  sweepDeg,
})
export const straight = (lengthMm: number): OutlinePiece => ({ kind: 'straight', lengthMm })

/** Rings from the inside outward, under fixed ids. */
export const rings = (...list: Omit<RingPlan, 'order'>[]): Record<string, RingPlan> =>
  Object.fromEntries(
    list.map((ring, i) => [`5ee00000-0000-4000-8000-00000000000${i + 1}`, { order: 'gmt'[i] ?? 'z', ...ring }]),
  )

export const lining = (kind: LiningPlan['kind'], widthMm: number, heightMm: number): LiningPlan => ({
  kind,
  widthMm,
  heightMm,
})

/** No readings taken: what an outline drawn another way carries. */
export const notRead = (tailRadiusMm: number, neckFlatMm: number): HalfWidthsPlan => ({
  rows: [],
  tailRows: [],
  neckRows: [],
  readToMm: 0.5,
  tailRadiusMm,
  neckFlatMm,
  neckRadiusMm: null,
})

/** The cutaway a form would have if it were asked for. */
export const noCutaway = (leavesAtMm: number, hornRadiusMm: number, hollowRadiusMm: number, meetsNeckAtMm: number) =>
  ({ form: 'none', leavesAtMm, hornRadiusMm, hollowRadiusMm, meetsNeckAtMm }) as const

/** The chain of the steel-string's half outline. */
export const STEEL_PIECES: readonly OutlinePiece[] = [
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
]
