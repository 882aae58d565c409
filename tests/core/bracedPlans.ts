import type { BraceEndPlan, BracePlan } from '../../src/core/boxPlan.ts'
import type { Plan } from '../../src/core/plan.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { atBrace, beyond, brace, here, rimAt } from './instrument/brace/braceSamples.ts'
import { PLANED, withFields } from './everyForm.ts'

const long = { taper: 'straight', taperMm: 300, endHeightMm: 3 } as const
const scoop = { taper: 'scoop', taperMm: 60, endHeightMm: 2 } as const
const lapped = { lapped: true } as const
const back = { plate: 'back' } as const

/** Braces that between them hang on everything: both plates, all faces, tapers that reach the crossings, and crossings so near the rim that a thicker side or a cutaway takes them away. */
const BRACES: Readonly<Record<string, BracePlan>> = {
  beside: brace(rimAt('bass', 120, long), rimAt('treble', 455, scoop)),
  astride: brace(rimAt('bass', 440, scoop), rimAt('treble', 380), { underside: 'own', archRadiusMm: 6000 }),
  atRim: brace(here(110.9, -100), beyond(110.9, -150, scoop), lapped),
  atRimToo: brace(here(60, -100), beyond(85.45, -145.35), lapped),
  inHorn: brace(here(400, 40), beyond(405, 46, scoop), lapped),
  inHornToo: brace(here(420, 20), beyond(423, 28), lapped),
  stops: brace(atBrace('beside', 260, -60), beyond(300, -90), { underside: 'flat' }),
  low: brace(rimAt('bass', 150, long), rimAt('treble', 190, long), { ...back, ...lapped }),
  lowToo: brace(rimAt('bass', 205, long), rimAt('treble', 140, scoop), { ...back, ...lapped }),
  nearTail: brace(rimAt('bass', 40), rimAt('treble', 40), back),
  high: brace(rimAt('treble', 450, scoop), rimAt('bass', 400), { ...back, underside: 'own', archRadiusMm: 3000 }),
}

const PATCHED = {
  'bracing.braces': Object.fromEntries(Object.entries(BRACES).map(([id, one], i) => [id, { ...one, order: `${i}` }])),
  'bracing.crossPatchMm': 30,
  'bracing.holeRingMm': 15,
  'bracing.stripWidthMm': 16,
  'bridge.plateTailWidthMm': 150,
  'bridge.plateNeckWidthMm': 140,
}

export const BRACED: Plan = withFields(STEEL_STRING.plan, PATCHED)
export const BY_BRACES: readonly Plan[] = [
  BRACED,
  withFields(BRACED, PLANED),
  withFields(BRACED, { 'top.form': 'flatRim', 'back.form': 'across' }),
  withFields(BRACED, { 'top.form': 'sphere', 'outline.cutaway.form': 'rounded' }),
]

/** Other braces: each changed a little, one left out, none. */
export function braceChanges({ bracing: { braces } }: Plan): unknown[] {
  const each = (change: (one: BracePlan) => BracePlan) =>
    Object.fromEntries(Object.entries(braces).map(([id, one]) => [id, change(one)]))
  const moved = (end: BraceEndPlan): BraceEndPlan => ({
    ...end,
    xMm: end.xMm + 1.3,
    yMm: end.yMm + 0.7,
    letInMm: end.letInMm + 1,
    taperMm: end.taperMm + 5,
    endHeightMm: end.endHeightMm + 0.5,
  })
  return [
    each((one) => ({ ...one, from: moved(one.from) })),
    each((one) => ({ ...one, to: moved(one.to) })),
    each((one) => ({ ...one, widthMm: one.widthMm + 1, heightMm: one.heightMm + 2 })),
    each((one) => ({ ...one, archRadiusMm: one.archRadiusMm * 1.2 })),
    Object.fromEntries(Object.entries(braces).slice(1)),
    {},
  ]
}
