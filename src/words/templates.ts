import type { TemplateName, TemplateRef } from '../drawing/template/template.ts'

/** A side and its pieces as the names of templates tell them apart. */
function sideName(of: string | null): string {
  const [, side, number] = /^(bass|treble)(\d*)$/.exec(of ?? '') ?? []
  if (side === undefined) return ''
  return `, ${side} side${number === '' || number === undefined ? '' : `, piece ${number}`}`
}
const halfName = (of: string | null): string => (of === 'treble' ? 'treble half' : 'bass half')
const blockName = (of: string | null): string => (of === 'neck' ? 'neck block' : 'tail block')
const plateName = (of: string | null): string => (of === 'back' ? 'back' : 'top')

/** What a template is, as its title says. `braceNumberOf`: the number among all braces of the one a template names; null where it is gone. */
export function templateTitle({ name, of }: TemplateRef, braceNumberOf: (of: string) => number | null): string {
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
      const number = of === null ? null : braceNumberOf(of)
      return number === null ? 'Brace' : `Brace ${number}`
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
  mould:
    'The line is the outer face of the sides and the clearance. Keep the wood outside it. Where both halves are alike, turn it over for the other.',
  bendingForm:
    'The line is the inner face of the side less slat and blanket. Keep the wood inside it. Where both sides are alike, turn it over for the other.',
  caul: 'The line is the inner face of the sides less the clearance. Keep the wood inside it. Where both halves are alike, turn it over for the other.',
  sideBlank:
    'Lay the straight edge of the blank on the straight edge here, show face up, and saw along the heavy curve.',
  contourBoard:
    'The convex board gives the curve of the block’s glue face, the hollow one checks it. Lay both on the block’s centreline.',
  dishArch: 'The bulging edge checks a dish or a sanding board. The hollow edge left over checks the plate.',
  rosettePlan:
    'Lay the cross on the centre of the hole and the line on the centreline. The cutter’s own circles are drawn beside the walls.',
  bracingPlan:
    'Seen from inside. Cut it out along the inner face of the sides, lay it on the plate and prick the braces through.',
  braceArch:
    'Saw to the heavy line and plane the gluing face to it. What is sawn off is the hollow gauge for the same face. A twin that is alike takes the same one.',
  bindingGauge:
    'Cut each one out and slide it along the side, held square to it: its step rests in the ledge and its upper edge comes level with the plate. Upside down it checks the back.',
  fretboardPlan:
    'Lay the nut end on the end of the blank and the centreline on its middle, and mark every slot. Measure each from the nut.',
  slottingRuler:
    'Clamp it along the board’s centreline with its square end at the nut, and mark every slot. Measure each from the nut.',
  bridgeGauge:
    'Butt its stem against the end of the board, on the centreline, and score the bridge’s front edge and corners through the slot. Figures run from the joint.',
  neckSetGauge:
    'Lay the straight edge on the frets, its joint mark over the joint. When the neck is set, before stringing, the foot just touches the top.',
}

/** What a template is for and how it is held, in a line or two. */
export const templateUse = (name: TemplateName): string => USES[name]
