import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const mitre = (plate: 'top' | 'back', sign: '+' | '−'): NumberTexts => ({
  what: `Where the wedge’s purfling turns into one along the ${plate} binding: the angle both are cut to, from their own edge.`,
  how: 'Bevel gauge, stock along the purfling.',
  formula: `(90° ${sign} v) ÷ 2: v the taper of each edge.`,
  from: 'Half the angle between the wedge’s edge and the binding; derived.',
})
const widthAt = (plate: 'top' | 'back'): NumberTexts => ({
  what: `Whole width of the wedge where it meets the ${plate} binding, purflings in it.`,
  how: `Caliper across, along the ${plate} binding.`,
  formula:
    plate === 'top'
      ? 'p − (p − q) × h ÷ f: p and q the widths entered for top and back, h binding height, f the full length.'
      : 'q + (p − q) × h ÷ f: p and q the widths entered for top and back, h binding height, f the full length.',
  from: 'Straight edges between the two widths; derived.',
})
const woodAt = (plate: 'top' | 'back'): NumberTexts => ({
  what: `Width of the wedge’s own wood at the outer face of the ${plate}, purflings left out; 0 where they run together.`,
  how: `Caliper across the end of the wedge that comes to the ${plate}, before it is let in.`,
  formula: 'k − 2 × g ÷ cos v: k the width entered there, g the purfling, v the taper of each edge.',
  from: 'The purfling is measured square to the edge; derived.',
})

export const END_WEDGE_WORDS: Record<KeysUnder<'endWedge' | 'backStrip'>, NumberTexts> = {
  'endWedge.fullMm': {
    what: 'Length of the wedge from the outer face of the top to that of the back, as it is let in before the bindings.',
    how: 'Caliper over both plates at the tail centre.',
    formula: 'T + t + b: T the rim depth at the tail, t and b the thicknesses of top and back.',
    from: 'Plain sum; derived.',
  },
  'endWedge.betweenMm': {
    what: 'What shows of the wedge between the two bindings.',
    how: 'Caliper at the tail centre, binding to binding.',
    formula: 'f − 2 × h: f the full length, h binding height.',
    from: 'Plain difference; derived.',
  },
  'endWedge.taperRad': {
    what: 'Lean of each long edge of the wedge to the centreline; plus where it is wider at the top.',
    how: 'Bevel gauge, stock along one binding, blade along the edge: so much off square.',
    formula: 'atan((p − q) ÷ (2 × f)): p and q the widths entered for top and back, f the full length.',
    from: 'Right triangle; derived.',
  },
  'endWedge.topMm': widthAt('top'),
  'endWedge.backMm': widthAt('back'),
  'endWedge.woodTopMm': woodAt('top'),
  'endWedge.woodBackMm': woodAt('back'),
  'endWedge.intoSideMm': {
    what: 'How deep the channel of the wedge is cut into the tail, from the sides’ outer face.',
    how: 'Depth gauge on the sides, to the floor of the channel.',
    ...ENTERED,
  },
  'endWedge.edgeMm': {
    what: 'Width of the purfling along each long edge of the wedge, square to the edge; none without one.',
    how: 'Caliper across the strip.',
    ...ENTERED,
  },
  'endWedge.purflingMm': {
    what: 'Length of the purfling along one long edge of the wedge, from binding to binding.',
    how: null,
    formula: 'm ÷ cos v: m the length between the bindings, v the taper of each edge.',
    from: 'Right triangle; derived.',
  },
  'endWedge.purflingCutMm': {
    what: 'The same purfling with trim at both ends; two are needed.',
    how: 'Rule along the strip.',
    formula: 'f + 2 × e: f the fitted length, e what strips are longer by.',
    from: 'Plain sum; derived.',
  },
  'endWedge.mitreTopRad': mitre('top', '+'),
  'endWedge.mitreBackRad': mitre('back', '−'),
  'endWedge.intoBlockMm': {
    what: 'How far the wedge goes through the sides into the tail block; minus where some of the side is left behind it.',
    how: 'Depth gauge in the channel; the side’s thickness less.',
    formula: 'd − s: d depth of the wedge, s side thickness.',
    from: 'Plain difference; derived.',
  },
  'endWedge.blockLeftMm': {
    what: 'What is left of the tail block’s thickness behind the wedge.',
    how: null,
    formula: 'B − i: B thickness of the tail block, i how far the wedge goes into it, not under 0.',
    from: 'Plain difference; derived.',
  },
  'endWedge.besideMm': {
    what: 'Tail block on each side of the wedge, at its wider end; minus where the wedge stands over the block.',
    how: null,
    formula: '(B − k) ÷ 2: B width of the tail block, k the wider end of the wedge.',
    from: 'Plain difference; derived.',
  },
  'backStrip.widthMm': {
    what: 'Width of the channel in the outer face of the back, over its joint.',
    how: 'Caliper across the channel.',
    ...ENTERED,
  },
  'backStrip.downMm': {
    what: 'Depth of the same channel.',
    how: 'Depth gauge on the back, to the floor of the channel.',
    ...ENTERED,
  },
  'backStrip.chordMm': {
    what: 'Straight from one end of the strip to the other, tail binding to the binding at the heel, on the outer face of the back.',
    how: 'Rule held over the back along its joint.',
    formula:
      'Straight line between the two ends, each one binding thickness inside the body and one back thickness out from its inside.',
    from: 'Pythagoras between two places of the outer face; derived.',
  },
  'backStrip.arcMm': {
    what: 'The same along the dome of the back’s outer face: the length that is let in.',
    how: 'Tape along the joint, pressed to the back.',
    formula:
      'i + b × a: i the length along the inside of the back, b thickness of the back, a the angle between its two ends.',
    from: 'Gauss’s rule along the centreline, and the length of a parallel curve; derived.',
  },
  'backStrip.cutMm': {
    what: 'The strip with trim at both ends.',
    how: 'Tape along the strip.',
    formula: 'f + 2 × e: f the length along the dome, e what strips are longer by.',
    from: 'Plain sum; derived.',
  },
  'backStrip.leftMm': {
    what: 'What the strip’s channel leaves of the back; minus where it goes right through.',
    how: 'Depth gauge in the channel; the rest of the back is left.',
    formula: 'b − d: b thickness of the back, d depth of the strip.',
    from: 'Plain difference; derived.',
  },
}
