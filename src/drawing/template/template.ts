/** What can be laid out at full size, in the order it is reached for. */
export const TEMPLATE_NAMES = [
  'outlineHalf',
  'outlineWhole',
  'mould',
  'bendingForm',
  'caul',
  'sideBlank',
  'contourBoard',
  'dishArch',
  'rosettePlan',
  'bracingPlan',
  'braceArch',
  'bindingGauge',
  'fretboardPlan',
  'slottingRuler',
  'bridgeGauge',
  'neckSetGauge',
] as const
export type TemplateName = (typeof TEMPLATE_NAMES)[number]

/**
 * One template of an instrument. `of` says which of several: a side (bass, treble, or treble2 for its second piece), an end (tail, neck), a
 * plate (top, back), or a brace by its id, with `:treble` after it for a twin that is not like the first; null where there is but one.
 */
export interface TemplateRef {
  readonly name: TemplateName
  readonly of: string | null
}
