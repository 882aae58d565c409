import type { BRACE_KINDS, PlateSide } from '../core/boxPlan.ts'
import type { FormLine } from '../core/jigs.ts'
import type { TemplateName, TemplateRef } from '../drawing/template/template.ts'
import { BRACE_KIND_WORDS } from './box/bracing.ts'

/** A brace, or twins that take the same template: their numbers among all, what they are, and of which plate. */
export interface BraceTold {
  readonly numbers: readonly number[]
  readonly kind: (typeof BRACE_KINDS)[number]
  readonly plate: PlateSide
}

/** A side and its pieces as the names of templates tell them apart. */
function sideName(of: string | null): string {
  const [, side, number] = /^(bass|treble)(\d*)$/.exec(of ?? '') ?? []
  if (side === undefined) return ''
  return `, ${side} side${number === '' || number === undefined ? '' : `, piece ${number}`}`
}
const halfName = (of: string | null): string => (of === 'treble' ? 'treble half' : 'bass half')
const blockName = (of: string | null): string => (of === 'neck' ? 'neck block' : 'tail block')
const plateName = (of: string | null): string => (of === 'back' ? 'back' : 'top')

/** Brace 2, X brace, top. Braces 3 and 4, tone bar, top. One that is called a brace and no more is not called so twice. */
function braceTitle({ numbers, kind, plate }: BraceTold): string {
  const word = BRACE_KIND_WORDS[kind]
  const what = kind === 'other' ? '' : `, ${kind === 'cross' ? word : word.toLowerCase()}`
  return `${numbers.length > 1 ? 'Braces' : 'Brace'} ${numbers.join(' and ')}${what}, ${plateName(plate)}`
}

/** What a template is, as its title says. `braceOf`: the brace a template names; null where it is gone. */
export function templateTitle({ name, of }: TemplateRef, braceOf: (of: string) => BraceTold | null): string {
  switch (name) {
    case 'outlineHalf':
      return `Outline, ${halfName(of)}`
    case 'outlineWhole':
      return 'Outline, whole'
    case 'mould':
      return `Outside mould, ${halfName(of)}`
    case 'bendingForm':
      return `Bending form${sideName(of)}`
    case 'caul':
      return `Inside caul, ${halfName(of)}`
    case 'sideBlank':
      return `Side blank${sideName(of)}`
    case 'contourBoard':
      return `Contour boards, ${blockName(of)}`
    case 'dishArch':
      return `Arch of the dish, ${plateName(of)}`
    case 'rosettePlan':
      return 'Soundhole and rosette'
    case 'bracingPlan':
      return `Bracing plan, ${plateName(of)}`
    case 'braceArch': {
      const told = of === null ? null : braceOf(of)
      return told === null ? 'Brace' : braceTitle(told)
    }
    case 'bindingGauge':
      return 'Binding height gauge'
    case 'fretboardPlan':
      return 'Fingerboard'
    case 'slottingRuler':
      return 'Slotting ruler'
    case 'bridgeGauge':
      return 'Bridge place gauge'
    case 'neckSetGauge':
      return 'Neck-set gauge'
  }
}

const USES: Readonly<Record<TemplateName, string>> = {
  outlineHalf:
    'Saw along the heavy line and lay the straight edge on the centreline. Where both halves are alike, turn it over for the other.',
  outlineWhole: 'Saw along the heavy line and lay its centreline on the joint of the plate.',
  mould: 'Keep the wood outside the heavy line. Where both halves are alike, turn it over for the other.',
  bendingForm: 'Keep the wood inside the heavy line. Where both sides are alike, turn it over for the other.',
  caul: 'Keep the wood inside the heavy line. Where both halves are alike, turn it over for the other.',
  sideBlank:
    'Lay the straight edge of the blank on the straight edge here, show face up, and saw along the heavy curve.',
  contourBoard:
    'The convex board gives the curve of the block’s glue face, the hollow one checks it. Lay both on the block’s centreline.',
  dishArch: 'The bulging edge checks a dish or a sanding board. The hollow edge left over checks the plate.',
  rosettePlan:
    'Lay the cross on the centre of the hole and the line on the centreline. The heavy lines are the edge of the hole and the walls of the channels. On the dashed circles the middle of the cutter runs: do not saw along them.',
  bracingPlan: 'Cut it out along the inner face of the sides, lay it on the plate and prick the braces through.',
  braceArch:
    'Saw to the heavy line and plane the gluing face to it. What is sawn off is the hollow gauge for the same face. A twin that is alike takes the same one.',
  bindingGauge:
    'Cut each one out and slide it along the side, held square to it: its step rests in the ledge and its upper edge comes level with the plate. Upside down it checks the back.',
  fretboardPlan:
    'Lay the nut end on the end of the blank and the centreline on its middle, and mark every slot. Measure each from the nut.',
  slottingRuler:
    'Clamp it along the board’s centreline with its square end at the nut, and mark every slot. Measure each from the nut.',
  bridgeGauge:
    'Butt its stem against the end of the board, on the centreline, and score the bridge’s front edge and both ends through the slot, its outer walls. Score the back edge between them. Figures run from the joint.',
  neckSetGauge:
    'Lay the straight edge on the frets, its joint mark over the joint. When the neck is set, before stringing, the foot just touches the top.',
}

/** Where the line of a form runs; `off` is how far from the outer face of the sides, as a length with its unit. */
const LINES: Readonly<Record<FormLine, (off: string) => string>> = {
  mould: (off) => `The heavy line runs ${off} outside the outer face of the sides: the clearance.`,
  bendingForm: (off) => `The heavy line runs ${off} inside the outer face of the side: side, slat and blanket.`,
  caul: (off) => `The heavy line runs ${off} inside the outer face of the sides: side and clearance.`,
}
const FIGURES_OF_BODY = 'Figures are those of the body outline, dotted.'

/** What a template is for and how it is held, in a line or two. `off`: how far the line of a form runs from the outer face, set with its unit. */
export const templateUse = (name: TemplateName, off: string | null = null): string =>
  off !== null && isForm(name) ? `${LINES[name](off)} ${FIGURES_OF_BODY} ${USES[name]}` : USES[name]

const isForm = (name: TemplateName): name is FormLine => name in LINES
