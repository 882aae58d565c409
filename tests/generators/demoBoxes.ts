import type { BraceEndPlan, BracePlan } from '../../src/core/boxPlan.ts'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { CUTTING } from '../../src/record/migrations/usualBoxes.ts'
import { type BracingPattern, bracingSiteOf, type PatternBrace } from '../../src/record/patterns/bracings.ts'
import { orderStrings } from '../../src/record/order.ts'

/** What stands inside the boxes of the demo models and closes them. Invented and coherent; no maker's plan was copied. */
type BoxPlans = Pick<Plan, 'bracing' | 'air' | 'edges' | 'cutting'>

const AIR = { temperatureC: 20, holeChangeMm: 1, depthChangeMm: 5, heardHz: null } as const

/** What all is sawn from: a wood for the top, for back and sides, for the neck, and for what is hard. */
const cuttingOf = (top: string, back: string, neck: string, hard: string): Plan['cutting'] => ({
  ...CUTTING,
  woods: {
    top,
    back,
    sides: back,
    neck,
    board: hard,
    bridge: hard,
    braces: top,
    linings: neck,
    blocks: neck,
    edges: 'Maple',
    fittings: '',
  },
  planks: {
    'b0a4d000-0000-4000-8000-000000000001': plank('g', 'neck', 900, 160, 26),
    'b0a4d000-0000-4000-8000-000000000002': plank('t', 'braces', 620, 120, 26),
  },
})
const plank = (order: string, role: 'neck' | 'braces', lengthMm: number, widthMm: number, thicknessMm: number) => ({
  order,
  role,
  lengthMm,
  widthMm,
  thicknessMm,
})

export const STEEL_BOX: BoxPlans = {
  bracing: {
    braces: {},
    blankEndMm: 10,
    blankHeightMm: 2,
    blankWidthMm: 0.5,
    crossPatchMm: 30,
    crossPatchThicknessMm: 1.5,
    holeRingMm: 0,
    holeRingSetBackMm: 3,
    holeRingThicknessMm: 2,
    stripWidthMm: 18,
    stripThicknessMm: 2.5,
  },
  cutting: cuttingOf('Spruce', 'Walnut', 'Mahogany', 'Ebony'),
  air: AIR,
  edges: {
    purflingDepthMm: 1.8,
    trimMm: 15,
    wedgeTopMm: 18,
    wedgeBackMm: 12,
    wedgeDepthMm: 2.2,
    wedgePurflingMm: 0.6,
    backStripMm: 6,
    backStripDepthMm: 1.2,
  },
}

export const NYLON_BOX: BoxPlans = {
  bracing: {
    braces: {},
    blankEndMm: 10,
    blankHeightMm: 2,
    blankWidthMm: 0.5,
    crossPatchMm: 0,
    crossPatchThicknessMm: 1.5,
    holeRingMm: 8.5,
    holeRingSetBackMm: 3,
    holeRingThicknessMm: 1.8,
    stripWidthMm: 16,
    stripThicknessMm: 2.5,
  },
  cutting: cuttingOf('Cedar', 'Cypress', 'Cedrela', 'Ebony'),
  air: AIR,
  edges: {
    purflingDepthMm: 1.6,
    trimMm: 15,
    wedgeTopMm: 16,
    wedgeBackMm: 12,
    wedgeDepthMm: 2,
    wedgePurflingMm: 0.6,
    backStripMm: 5,
    backStripDepthMm: 1,
  },
}

export const SMALL_BOX: BoxPlans = {
  bracing: {
    braces: {},
    blankEndMm: 6,
    blankHeightMm: 1.5,
    blankWidthMm: 0.4,
    crossPatchMm: 0,
    crossPatchThicknessMm: 1,
    holeRingMm: 6.5,
    holeRingSetBackMm: 2,
    holeRingThicknessMm: 1.5,
    stripWidthMm: 10,
    stripThicknessMm: 1.8,
  },
  cutting: cuttingOf('Spruce', 'Cherry', 'Maple', 'Pear'),
  air: AIR,
  edges: {
    purflingDepthMm: 1.2,
    trimMm: 12,
    wedgeTopMm: 10,
    wedgeBackMm: 7,
    wedgeDepthMm: 1.7,
    wedgePurflingMm: 0,
    backStripMm: 0,
    backStripDepthMm: 1,
  },
}

/** To what a maker would write down. */
const tidy = (mm: number): number => Math.round(mm * 2) / 2
const tidyEnd = (end: BraceEndPlan): BraceEndPlan => ({
  ...end,
  xMm: tidy(end.xMm),
  yMm: tidy(end.yMm),
  letInMm: tidy(end.letInMm),
  taperMm: tidy(end.taperMm),
  endHeightMm: tidy(end.endHeightMm),
})
const tidyBrace = (brace: BracePlan): BracePlan => ({
  ...brace,
  from: tidyEnd(brace.from),
  to: tidyEnd(brace.to),
  widthMm: tidy(brace.widthMm),
  heightMm: tidy(brace.heightMm),
})

/** The plan with braces of its top and back laid out from patterns, under fixed ids. */
export function braced(plan: Plan, ...patterns: readonly BracingPattern[]): Plan {
  const site = bracingSiteOf(plan, compute(plan).numbers)
  let last = 0
  const newId = () => `b4ace000-0000-4000-8000-${String((last += 1)).padStart(12, '0')}`
  const laid: PatternBrace[] = patterns.flatMap((pattern) => [...pattern(site, newId)])
  const orders = orderStrings(laid.length)
  const braces = Object.fromEntries(
    laid.map(({ id, brace }, i) => [id, { ...tidyBrace(brace), order: orders[i] ?? 'z' }]),
  )
  return { ...plan, bracing: { ...plan.bracing, braces } }
}
