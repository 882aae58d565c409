import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

export const ROSETTE_WORDS: Record<KeysUnder<'soundhole' | 'rosette'>, NumberTexts> = {
  'soundhole.centreMm': {
    what: 'Place of the centre of hole and rings, from the tail.',
    how: 'Rule along the centreline from the tail.',
    ...ENTERED,
  },
  'soundhole.radiusMm': {
    what: 'Radius of the finished soundhole.',
    how: 'Dividers from the centre pin.',
    ...ENTERED,
  },
  'soundhole.cutterCircleMm': {
    what: 'Radius on which the centre of the cutter runs to leave the hole at its size.',
    how: 'Caliper from the pivot pin to the middle of the cutter.',
    formula: 'r − d/2: r radius of the hole, d diameter of the cutter; never under 0.',
    from: 'Plain difference; derived.',
  },
  'soundhole.discMm': {
    what: 'Radius of the disc left over when the hole is through.',
    how: null,
    formula: 'r − d: r radius of the hole, d diameter of the cutter; 0 where the cutter takes it all.',
    from: 'Plain difference; derived.',
  },
  'soundhole.toFirstRingMm': {
    what: 'Width of wood left between the edge of the hole and the innermost ring.',
    how: null,
    formula: 'i − r: i the least inner radius of all rings, r radius of the hole.',
    from: 'Plain difference; derived.',
  },
  'soundhole.centreToBoardEndMm': {
    what: 'From the centre of the hole to the square end of the fingerboard.',
    how: 'Rule along the centreline.',
    formula: 'b − c: b end of the board, c centre of the hole, both from the tail.',
    from: 'Plain difference; derived.',
  },
  'rosette.channelDepthMm': {
    what: 'How deep the channels go: thickness of the inlay less what is left standing proud.',
    how: 'Depth gauge in the channel.',
    formula: 'i − p: i thickness of the inlay, p how far it is left proud; never under 0.',
    from: 'Plain difference; derived.',
  },
  'rosette.rings[].innerRadiusMm': {
    what: 'Inner wall of the ring’s channel, from the centre of the hole.',
    how: 'Dividers from the centre pin.',
    ...ENTERED,
  },
  'rosette.rings[].outerRadiusMm': {
    what: 'Outer wall of the ring’s channel, from the centre of the hole.',
    how: 'Dividers from the centre pin.',
    ...ENTERED,
  },
  'rosette.rings[].widthMm': {
    what: 'Width of the ring’s channel.',
    how: 'Caliper across the channel.',
    formula: 'Outer less inner radius; never under 0.',
    from: 'Plain difference; derived.',
  },
  'rosette.rings[].hiddenRad': {
    what: 'Angle over which the fingerboard hides the whole width of the ring.',
    how: null,
    formula:
      '2 × the lesser of acos(e/i) and asin((h + e × m) ÷ (o × √(1 + m²))) − atan m: i, o radii, e centre to board end, h half its width there, m half its widening per length.',
    from: 'The ring cut by the board’s square end and its two edges; derived.',
  },
  'rosette.rings[].hiddenMm': {
    what: 'The same as a length along the middle of the ring.',
    how: null,
    formula: 'a × m: a the hidden angle in radians, m the radius at the middle of the ring.',
    from: 'Arc = angle × radius; derived.',
  },
  'rosette.rings[].gapRad': {
    what: 'Angle of the gap left open under the board.',
    how: null,
    formula: 'g ÷ m: g the gap along the ring, m the radius at its middle.',
    from: 'Arc = angle × radius; derived.',
  },
  'rosette.rings[].gapMm': {
    what: 'Length of the gap left open under the board, along the middle of the ring.',
    how: 'Rule between the ends of the strip.',
    formula: 'As entered. Left open: hidden length − 2 × margin, never under 0. A closed ring has 0.',
    from: 'Entered, or derived; that a margin stays under the board is common practice.',
  },
  'rosette.rings[].stripLengthMm': {
    what: 'Length of the strip to bend in, along the middle of the ring.',
    how: 'Tape along the strip.',
    formula: '2 × π × m − g: m the radius at the middle of the ring, g the gap.',
    from: 'Circumference; derived.',
  },
  'rosette.rings[].visibleRad': {
    what: 'Angle of the ring that is left in sight beside the board.',
    how: null,
    formula: '360° − hidden angle.',
    from: 'Plain difference; derived.',
  },
  'rosette.rings[].innerCutterCircleMm': {
    what: 'Radius on which the centre of the cutter runs for the inner wall.',
    how: 'Caliper from the pivot pin to the middle of the cutter.',
    formula: 'i + d/2: i inner radius of the channel, d diameter of the cutter.',
    from: 'Plain sum; derived.',
  },
  'rosette.rings[].outerCutterCircleMm': {
    what: 'Radius on which the centre of the cutter runs for the outer wall.',
    how: 'Caliper from the pivot pin to the middle of the cutter.',
    formula: 'o − d/2: o outer radius of the channel, d diameter of the cutter; never under 0.',
    from: 'Plain difference; derived.',
  },
  'rosette.rings[].passes': {
    what: 'Circles the cutter has to run, with the stated overlap, to clear the channel.',
    how: null,
    formula:
      '1 + (w − d) ÷ (d − v), rounded up: w channel width, d cutter diameter, v overlap. 1 where the cutter is as wide as the channel.',
    from: 'Counted by steps across the channel; derived.',
  },
  'rosette.rings[].tileRad': {
    what: 'Angle each tile or wedge takes up round the ring.',
    how: null,
    formula: 's ÷ m ÷ n: s strip length, m the radius at the middle of the ring, n the count of tiles.',
    from: 'Arc = angle × radius; derived.',
  },
  'rosette.rings[].tileLengthMm': {
    what: 'Length each tile or wedge takes up along the middle of the ring.',
    how: null,
    formula: 's ÷ n: s strip length, n the count of tiles.',
    from: 'Even shares; derived.',
  },
}
