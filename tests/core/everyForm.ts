import { type Computed, compute } from '../../src/core/compute.ts'
import { BACK_FORMS, type DrawnPathPlan, type Plan, TOP_FORMS } from '../../src/core/plan.ts'
import { NECK_ASKS } from '../../src/core/catalogue/hangsOn.ts'
import { PLAN_FIELDS, type PlanField } from '../../src/core/planFields.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { BY_KEY_WIDTHS as KEYED, NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'

/** Plans that between them use every form and every field. Those drawn by key widths come second: only their outline is moved, since it takes its time. */
const FORMS = TOP_FORMS.flatMap((top) => BACK_FORMS.map((back) => ({ 'top.form': top, 'back.form': back })))
/** The first plans drawn by arcs are these, one each. */
export const FORM_COUNT = FORMS.length
const NO_TAPER = { 'rim.depthAtTailMm': 96, 'rim.depthAtNeckMm': 96 }
/** Deeper at the neck, so that the deepest places lie under the flat of the upper bout. */
const DEEP_NECK = {
  'rim.depthAtTailMm': 80,
  'rim.depthAtNeckMm': 125,
  'top.flatSlope': 'entered',
  'top.flatSlopeDeg': 0.2,
}
export const PLANED = {
  'top.form': 'flatUpperBout',
  'top.flatFromMm': 380,
  'top.flatSlope': 'entered',
  'top.flatSlopeDeg': 1,
}
/** The same, but falling as the neck asks. */
const ASKED = { 'top.flatSlope': 'neckSet' }
/** A flat that begins inside a block: its two faces then stand under different surfaces. */
const FLAT_OVER_TAIL = { ...PLANED, 'top.flatFromMm': 60, 'blocks.tail.thicknessMm': 80 }
const FLAT_OVER_NECK = { ...PLANED, 'top.flatFromMm': 465, 'blocks.neck.thicknessMm': 60 }
/** Blocks wider than the ends of the body: their contours end where the body does. */
const WIDE_BLOCKS = { 'blocks.tail.widthMm': 200, 'blocks.neck.widthMm': 200 }
/** Blocks whose thickness, not their width, ends what they cover of the side; braces stand evenly between them. */
const THIN_BLOCKS = {
  ...WIDE_BLOCKS,
  'blocks.tail.thicknessMm': 5,
  'blocks.neck.thicknessMm': 12,
  'sideBraces.atMm': null,
}

/** Edges with purfling at both plates; wedges that run to a point at either end. */
const PURFLED = { 'binding.topPurflingMm': 1.5, 'binding.backPurflingMm': 1, 'edges.wedgeTopMm': 0 }
const TO_A_POINT = { 'edges.wedgeBackMm': 0, 'edges.wedgePurflingMm': 0.5 }

/** A ring of wood right at the edge of the hole. */
const RING_AT_EDGE = { 'bracing.holeRingMm': 12, 'bracing.holeRingSetBackMm': 0 }
/** A box that was tapped. */
const asHeard = (plan: Plan): Plan => withField(plan, 'air.heardHz', 100)

export const BY_ARCS: readonly Plan[] = [
  ...FORMS.map((forms) => withFields(STEEL_STRING.plan, forms)),
  ...FORMS.map((forms) => withFields(STEEL_STRING.plan, { ...forms, ...NO_TAPER })),
  ...[DEEP_NECK, FLAT_OVER_TAIL, FLAT_OVER_NECK].flatMap((fields) => [
    withFields(STEEL_STRING.plan, fields),
    withFields(STEEL_STRING.plan, { ...fields, ...ASKED }),
  ]),
  withFields(STEEL_STRING.plan, PLANED),
  withFields(SMALL.plan, { ...WIDE_BLOCKS, 'outline.lengthMm': null }),
  withFields(SMALL.plan, { ...WIDE_BLOCKS, 'outline.lengthMm': 181.2, 'outline.pieces': shrunk(SMALL.plan, 0.6) }),
  withFields(KEYED, { 'outline.kind': 'compassArcs', 'outline.lengthMm': 496 }),
  // A chain with open values, which the body length then decides; and one that gives the body length.
  withField(STEEL_STRING.plan, 'outline.pieces', withOpen(STEEL_STRING.plan, ['sweepDeg'])),
  withField(STEEL_STRING.plan, 'outline.pieces', withOpen(STEEL_STRING.plan, ['radiusMm', 'sweepDeg'])),
  withField(STEEL_STRING.plan, 'outline.lengthMm', null),
  withFields(STEEL_STRING.plan, THIN_BLOCKS),
  withFields(STEEL_STRING.plan, RING_AT_EDGE),
  ...[PURFLED, TO_A_POINT].map((fields) => withFields(STEEL_STRING.plan, fields)),
  withFields(STEEL_STRING.plan, { 'outline.lengthMm': null, 'top.flatFromMm': 600 }),
].map(asHeard)
/** Bodies on which braces, air and edges are moved: every top, purfling all round, a wedge to a point, a small one. */
export const BY_EDGES: readonly Plan[] = [
  ...TOP_FORMS.map((form) => withField(STEEL_STRING.plan, 'top.form', form)),
  ...[PURFLED, TO_A_POINT, RING_AT_EDGE].map((fields) => withFields(STEEL_STRING.plan, fields)),
  SMALL.plan,
].map(asHeard)
const TINY_WIDTHS = {
  'outline.lengthMm': 200,
  'outline.keyWidths.lowerBoutMm': 150,
  'outline.keyWidths.lowerBoutAtMm': 44,
  'outline.keyWidths.waistMm': 97,
  'outline.keyWidths.waistAtMm': 117,
  'outline.keyWidths.upperBoutMm': 114,
  'outline.keyWidths.upperBoutAtMm': 165,
}
const ROUND_NECK = { 'outline.keyWidths.neckFlatMm': 0, 'outline.keyWidths.neckRadiusMm': 300 }
export const BY_KEY_WIDTHS: readonly Plan[] = [
  KEYED,
  withFields(KEYED, PLANED),
  withFields(KEYED, { ...PLANED, ...NO_TAPER, ...ROUND_NECK }),
  withFields(KEYED, { ...PLANED, ...DEEP_NECK, ...ROUND_NECK }),
  withFields(KEYED, { ...FLAT_OVER_TAIL, ...ROUND_NECK }),
  withFields(KEYED, { ...FLAT_OVER_NECK, ...ROUND_NECK }),
  withFields(KEYED, { 'top.form': 'sphere', 'back.form': 'across', ...NO_TAPER, ...ROUND_NECK }),
  withFields(KEYED, { ...TINY_WIDTHS, ...WIDE_BLOCKS, ...ROUND_NECK }),
  // Where the round step of the stations changes, and where the deepest place jumps from the dome to the flat: from either side.
  ...onBothSides(
    withFields(KEYED, ROUND_NECK),
    'outline.lengthMm',
    [470, 540],
    ({ numbers }) => numbers.body.halfLengthMm < 760,
  ),
  ...onBothSides(
    withFields(KEYED, { ...PLANED, ...DEEP_NECK, ...ROUND_NECK }),
    'rim.depthAtNeckMm',
    [85, 125],
    ({ numbers }) => numbers.sides.deepestInsideAtMm < PLANED['top.flatFromMm'],
  ),
]

/** Cutaways of both forms on it, with a flat of the upper bout, an arched back and no taper among them. */
const CUT = { 'outline.cutaway.form': 'rounded' }
const POINTED = { 'outline.cutaway.form': 'pointed' }
export const BY_CUTAWAY: readonly Plan[] = [
  withFields(STEEL_STRING.plan, { ...CUT, 'back.form': 'flat' }),
  ...[PLANED, NO_TAPER, DEEP_NECK].map((fields) => withFields(STEEL_STRING.plan, { ...fields, ...POINTED })),
  withFields(STEEL_STRING.plan, { ...PLANED, ...POINTED, ...ASKED }),
  withFields(STEEL_STRING.plan, { ...POINTED, 'top.form': 'flatRim', 'sideBraces.atMm': null }),
  withFields(STEEL_STRING.plan, { ...POINTED, ...PURFLED, 'top.form': 'sphere', 'back.form': 'across' }),
  withFields(STEEL_STRING.plan, { ...CUT, 'sideBraces.atMm': null, 'blocks.neck.widthMm': 40 }),
  withFields(SMALL.plan, { ...CUT, 'sideBraces.form': 'wood', 'outline.cutaway.hornRadiusMm': 8 }),
  withFields(SMALL.plan, { ...POINTED, 'sideBraces.form': 'cloth' }),
  ...[CUT, POINTED].map((form) => withFields(STEEL_STRING.plan, { ...form, ...THIN_BLOCKS })),
  withFields(STEEL_STRING.plan, { ...POINTED, ...FLAT_OVER_TAIL, 'blocks.neck.thicknessMm': 120 }),
  withFields(STEEL_STRING.plan, { ...POINTED, ...PLANED, 'top.flatFromMm': 280 }),
  withFields(KEYED, { ...CUT, ...THIN_BLOCKS }),
].map(asHeard)
export const BY_READINGS: readonly Plan[] = [
  NYLON_STRING.plan,
  withFields(NYLON_STRING.plan, { ...PLANED, ...POINTED }),
  withFields(NYLON_STRING.plan, { 'outline.halfWidths.neckFlatMm': 0, 'outline.halfWidths.neckRadiusMm': 200 }),
]
export const DRAWN: DrawnPathPlan = {
  bass: { start: { x: 0, y: 0 }, strokes: [{ kind: 'arc', to: { x: 400, y: 0 }, bulge: -1 }] },
  treble: null,
  readToMm: 0.2,
  fileName: 'round.svg',
}

/** Boards, strings, bridges and necks of every form; the body stands still. */
const PAIRED = STEEL_STRING.plan.strings.set.map((string, i) => ({ ...string, pairedWithNext: i === 1 }))
const FANNED = {
  'scale.fan': 'fanned',
  'scale.squareFret': 5,
  'board.surface': 'compound',
  'board.bindingMm': 1,
  'bridge.compensation': 'estimated',
  'bridge.pinRun': 'withSaddle',
  'bridge.saddleTiltDeg': 4,
  'strings.set': PAIRED,
  'strings.otherNotes': [38, 45, 50, 55, 59, 62],
  'strings.otherScaleMm': 630,
  'bridge.pinSpreadMm': 48,
  'setup.nutBassMm': 0.7,
  'board.markersAt': [12, 20],
}
export const BY_NECKS: readonly Plan[] = [
  STEEL_STRING.plan,
  withFields(STEEL_STRING.plan, FANNED),
  withFields(STEEL_STRING.plan, { ...FANNED, 'bridge.holds': 'tie', 'scale.jointFret': 10, 'neck.joint': 'butt' }),
  withFields(STEEL_STRING.plan, { 'top.form': 'sphere', 'bridge.compensation': 'estimated', 'neck.rod': 'fitted' }),
  withFields(STEEL_STRING.plan, { 'top.form': 'flatRim', 'bridge.holds': 'tie', 'neck.rodLengthMm': 150 }),
  withFields(STEEL_STRING.plan, { ...FANNED, 'bridge.compensation': 'entered', 'top.form': 'flat' }),
  withFields(STEEL_STRING.plan, { ...FANNED, 'top.form': 'flat', 'board.widthAtTwelfthMm': 46 }),
  // A board that reaches past the middle of the hole, narrower there than the hole.
  withFields(STEEL_STRING.plan, { 'board.endBeyondLastFretMm': 70 }),
  withFields(STEEL_STRING.plan, { 'board.endBeyondLastFretMm': 70, 'scale.fan': 'fanned', 'scale.squareFret': 5 }),
  withFields(STEEL_STRING.plan, { ...FANNED, 'strings.set': STEEL_STRING.plan.strings.set.toReversed() }),
  withFields(STEEL_STRING.plan, PLANED),
  withFields(STEEL_STRING.plan, {
    'bridge.compensation': 'estimated',
    'strings.set': STEEL_STRING.plan.strings.set.toReversed(),
  }),
  withFields(STEEL_STRING.plan, {
    'neck.thicknessAtTenthMm': 20,
    'neck.rodFromNutMm': 10,
    // Ends between where the joint lies with frets fanned and with them square: over the bolts, or not.
    'neck.rodLengthMm': 345,
  }),
  withFields(SMALL.plan, { 'strings.set': SMALL.plan.strings.set.slice(0, 1), 'neck.joint': 'dovetail' }),
  SMALL.plan,
].map(asHeard)
export const isOfNeck = (field: PlanField): boolean =>
  /^(?:scale|board|frets|strings|setup|bridge|neck|head)\./.test(field)
/** How a flat of the upper bout falls: where one of these moves a number of the body, all of them can. */
export const ASKS: ReadonlySet<PlanField> = new Set([...NECK_ASKS, 'setup.riseMm', 'top.flatSlope', 'top.flatSlopeDeg'])
export const OF_BODY = PLAN_FIELDS.filter((field) => !isOfNeck(field) || field === 'bridge.thicknessMm')

export function withFields(plan: Plan, fields: Partial<Record<PlanField, unknown>>): Plan {
  return Object.entries(fields).reduce((done, [field, value]) => withField(done, field as PlanField, value), plan)
}

/** Three values of the chain left open: of one arc the radius, where that is asked, and sweeps. */
function withOpen(plan: Plan, what: readonly ('radiusMm' | 'sweepDeg')[]) {
  const [radius, ...sweeps] = what.includes('radiusMm') ? [4, 2, 7] : [-1, 2, 4, 7]
  return plan.outline.pieces.map((piece, i) => {
    if (piece.kind === 'straight') return piece
    if (i === radius) return { ...piece, radiusMm: null }
    return sweeps.includes(i) ? { ...piece, sweepDeg: null } : piece
  })
}

/** Two plans that differ by next to nothing in one field, with something else than that between them. */
function onBothSides(
  plan: Plan,
  field: PlanField,
  [from, to]: [number, number],
  isBefore: (computed: Computed) => boolean,
): Plan[] {
  let [low, high] = [from, to]
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2
    if (isBefore(compute(withField(plan, field, middle)))) low = middle
    else high = middle
  }
  return [withField(plan, field, low), withField(plan, field, high)]
}

export function shrunk(plan: Plan, factor: number) {
  return plan.outline.pieces.map((piece) =>
    piece.kind === 'straight'
      ? { ...piece, lengthMm: piece.lengthMm! * factor }
      : { ...piece, radiusMm: piece.radiusMm! * factor },
  )
}
