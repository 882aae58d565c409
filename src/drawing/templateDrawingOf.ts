import { PLATES, type PlateSide } from '../core/boxPlan.ts'
import type { Computed } from '../core/compute.ts'
import type { Jigs } from '../core/jigs.ts'
import type { Plan } from '../core/plan.ts'
import type { Drawing } from './drawing.ts'
import { asHanded } from './handed.ts'
import { bindingGauge } from './template/bindingGauge.ts'
import { braceArchTemplate } from './template/braceArchTemplate.ts'
import { braceRowOf, bracesToArch } from './template/braceRef.ts'
import { bracingPlan } from './template/bracingPlan.ts'
import { bridgeGauge } from './template/bridgeGauge.ts'
import { contourBoard } from './template/contourBoard.ts'
import { dishArch } from './template/dishArch.ts'
import { formLineTemplate } from './template/formLine.ts'
import { fretboardPlan } from './template/fretboardPlan.ts'
import { neckSetGauge } from './template/neckSetGauge.ts'
import { outlineHalf, outlineWhole } from './template/outlineTemplate.ts'
import { rosettePlan } from './template/rosettePlan.ts'
import { sideBlankTemplate } from './template/sideBlankTemplate.ts'
import { sideRef, sideOf } from './template/sideRef.ts'
import { slottingRuler } from './template/slottingRuler.ts'
import { TEMPLATE_NAMES, type TemplateName, type TemplateRef } from './template/template.ts'

/**
 * The templates that make sense for an instrument, in the order of their names: one half where both are alike, no arch where a plate is flat, no
 * gauge where nothing is bound.
 */
export const listTemplates = (computed: Computed, plan: Plan): TemplateRef[] =>
  TEMPLATE_NAMES.flatMap((name) => (MANY[name]?.(computed, plan) ?? [null]).map((of) => ({ name, of })))

/** Which there are of a template that comes more than once, or not always. */
const MANY: Partial<Record<TemplateName, (computed: Computed, plan: Plan) => readonly (string | null)[]>> = {
  outlineHalf: halves,
  mould: halves,
  bendingForm: ({ geometry }) => (geometry.outline.isMirrored ? ['bass'] : ['bass', ...trebleWoods(geometry)]),
  caul: halves,
  sideBlank: ({ geometry }) => [...trebleWoods(geometry), 'bass'],
  contourBoard: () => ['tail', 'neck'],
  dishArch: ({ geometry }) =>
    PLATES.filter((plate) => (plate === 'top' ? geometry.top : geometry.back).radiusMm !== 'flat'),
  bracingPlan: ({ geometry }) =>
    PLATES.filter((on) =>
      geometry.bracing.placed.some(({ plan: { plate }, lengthMm }) => plate === on && lengthMm > 0),
    ),
  braceArch: bracesToArch,
  bindingGauge: (_, { binding }) =>
    Math.max(binding.thicknessMm, binding.topPurflingMm, binding.backPurflingMm) > 0 ? [null] : [],
}

function halves({ geometry }: Computed): string[] {
  return geometry.outline.isMirrored ? ['bass'] : ['bass', 'treble']
}

const trebleWoods = ({ trebleSites }: Computed['geometry']): string[] =>
  trebleSites.map((_, piece) => sideRef('treble', piece))

/** One template at its true size, for the hand the instrument is played with. Reference edges, grain and marks are on it. */
export function templateDrawingOf(ref: TemplateRef, computed: Computed, plan: Plan, jigs: Jigs): Drawing {
  return asHanded(drawRightHanded(ref, computed, plan, jigs), plan.handed)
}

function drawRightHanded({ name, of }: TemplateRef, computed: Computed, plan: Plan, jigs: Jigs): Drawing {
  const { side, piece } = sideOf(of)
  const plate: PlateSide = of === 'back' ? 'back' : 'top'
  switch (name) {
    case 'outlineHalf':
      return outlineHalf(computed, side)
    case 'outlineWhole':
      return outlineWhole(computed)
    case 'mould':
    case 'bendingForm':
    case 'caul':
      return formLineTemplate(computed, name, side, jigs, piece)
    case 'sideBlank':
      return sideBlankTemplate(computed, side, piece)
    case 'contourBoard':
      return contourBoard(computed, of === 'neck' ? 'neck' : 'tail')
    case 'dishArch':
      return dishArch(computed, plate)
    case 'rosettePlan':
      return rosettePlan(computed)
    case 'bracingPlan':
      return bracingPlan(computed, plan, plate)
    case 'braceArch':
      return braceArchTemplate(computed, braceRowOf(computed, of) ?? -1)
    case 'bindingGauge':
      return bindingGauge(computed, plan)
    case 'fretboardPlan':
      return fretboardPlan(computed)
    case 'slottingRuler':
      return slottingRuler(computed)
    case 'bridgeGauge':
      return bridgeGauge(computed, plan)
    case 'neckSetGauge':
      return neckSetGauge(computed, plan)
  }
}
