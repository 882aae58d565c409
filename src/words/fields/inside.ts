import type { LINING_KINDS, SIDE_BRACE_ENDS, SIDE_BRACE_FORMS } from '../../core/plan.ts'
import type { FieldsUnder, FieldWords } from './fieldWords.ts'

/** What is glued to the sides inside and let into their edges, and the caul that presses joints. */
export const INSIDE_FIELDS: Record<FieldsUnder<'linings' | 'binding' | 'sideBraces' | 'caul'>, FieldWords> = {
  'linings.top.kind': { name: 'Top lining, kind', hint: 'How it follows the bend.' },
  'linings.top.widthMm': { name: 'Top lining, width', hint: 'On the edge of the rim, inward from the side.' },
  'linings.top.heightMm': { name: 'Top lining, height', hint: 'Down the inner face of the side.' },
  'linings.back.kind': { name: 'Back lining, kind', hint: 'How it follows the bend.' },
  'linings.back.widthMm': { name: 'Back lining, width', hint: 'On the edge of the rim, inward from the side.' },
  'linings.back.heightMm': { name: 'Back lining, height', hint: 'Up the inner face of the side.' },
  'linings.wastePercent': { name: 'Waste of lining', hint: 'Bought beyond what is glued.' },
  'binding.heightMm': { name: 'Binding, height', hint: 'Down the side, plate and all.' },
  'binding.thicknessMm': { name: 'Binding, thickness', hint: 'Let in from the outer face; 0 for no binding.' },
  'binding.topPurflingMm': { name: 'Purfling of the top', hint: 'Width inside the binding; 0 for none.' },
  'binding.backPurflingMm': { name: 'Purfling of the back', hint: 'Width inside the binding; 0 for none.' },
  'sideBraces.form': { name: 'Side braces', hint: 'Across the inside of both sides.' },
  'sideBraces.atMm': {
    name: 'Places of the side braces',
    hint: 'Round the outside from the tail, the same on both sides. Spaced evenly: from block to block.',
  },
  'sideBraces.spacingMm': {
    name: 'Side braces apart, at most',
    hint: 'Round the outside, where they are spaced evenly.',
  },
  'sideBraces.widthMm': { name: 'Side brace, width', hint: 'Along the side.' },
  'sideBraces.thicknessMm': { name: 'Side brace, thickness', hint: 'Inward from the side.' },
  'sideBraces.ends': { name: 'Side braces end', hint: 'At the edges: the linings are let in over them.' },
  'caul.spanMm': { name: 'Caul, between the clamps', hint: 'Clamp to clamp, not its whole length.' },
  'caul.widthMm': { name: 'Caul, width', hint: 'On the joint, square to its length.' },
  'caul.heightMm': { name: 'Caul, height', hint: 'In the direction it bends.' },
  'caul.modulusGPa': {
    name: 'Caul, stiffness of its wood',
    hint: 'Modulus of elasticity along the grain; many hardwoods lie between 9 and 15 GPa, from memory.',
  },
  'caul.forceN': { name: 'Caul, force wanted', hint: 'On the middle of the joint.' },
}

export const LINING_KIND_WORDS: Record<(typeof LINING_KINDS)[number], string> = {
  kerfed: 'Kerfed',
  reversedKerf: 'Kerfed, kerfs to the side',
  solidBent: 'Solid, bent',
  singleBlocks: 'Single blocks',
}
export const SIDE_BRACE_FORM_WORDS: Record<(typeof SIDE_BRACE_FORMS)[number], string> = {
  wood: 'Wood',
  cloth: 'Cloth tapes',
  none: 'None',
}
export const SIDE_BRACE_END_WORDS: Record<(typeof SIDE_BRACE_ENDS)[number], string> = {
  betweenLinings: 'At the linings',
  fullDepth: 'At the edges of the rim',
}
