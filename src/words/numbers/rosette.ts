import type { KeysUnder, NumberWords } from './numberWords.ts'

export const ROSETTE_WORDS: Record<KeysUnder<'scale' | 'soundhole' | 'rosette'>, NumberWords> = {
  'scale.jointToSaddleMm': {
    name: 'Joint to saddle line',
    what: 'From the fret at the neck joint to the saddle line, compensation left out.',
    how: 'Rule along the centreline from the neck joint.',
  },
  'scale.saddleLineMm': {
    name: 'Saddle line stands at',
    what: 'Place of the uncompensated saddle line, from the tail.',
    how: null,
  },
  'scale.boardEndMm': {
    name: 'Board ends at',
    what: 'Place of the fingerboard’s square end over the body, from the tail.',
    how: 'Rule along the centreline from the tail.',
  },
  'soundhole.centreMm': {
    name: 'Centre of the hole',
    what: 'Place of the centre of hole and rings, from the tail.',
    how: 'Rule along the centreline from the tail.',
  },
  'soundhole.radiusMm': {
    name: 'Radius of the hole',
    what: 'Radius of the finished soundhole.',
    how: 'Dividers from the centre pin.',
  },
  'soundhole.cutterCircleMm': {
    name: 'Cutter circle, hole',
    what: 'Radius on which the centre of the cutter runs to leave the hole at its size.',
    how: 'Caliper from the pivot pin to the middle of the cutter.',
  },
  'soundhole.discMm': {
    name: 'Disc that drops out',
    what: 'Radius of the disc left over when the hole is through.',
    how: null,
  },
  'soundhole.toFirstRingMm': {
    name: 'Wood from hole to first ring',
    what: 'Width of wood left between the edge of the hole and the innermost ring.',
    how: null,
  },
  'soundhole.centreToBoardEndMm': {
    name: 'Centre to board end',
    what: 'From the centre of the hole to the square end of the fingerboard.',
    how: 'Rule along the centreline.',
  },
  'rosette.channelDepthMm': {
    name: 'Channel depth',
    what: 'How deep the channels go: thickness of the inlay less what is left standing proud.',
    how: 'Depth gauge in the channel.',
  },
  'rosette.rings[].innerRadiusMm': {
    name: 'Inner radius',
    what: 'Inner wall of the ring’s channel, from the centre of the hole.',
    how: 'Dividers from the centre pin.',
  },
  'rosette.rings[].outerRadiusMm': {
    name: 'Outer radius',
    what: 'Outer wall of the ring’s channel, from the centre of the hole.',
    how: 'Dividers from the centre pin.',
  },
  'rosette.rings[].widthMm': {
    name: 'Width',
    what: 'Width of the ring’s channel.',
    how: 'Caliper across the channel.',
  },
  'rosette.rings[].hiddenRad': {
    name: 'Hidden by the board',
    what: 'Angle over which the fingerboard hides the whole width of the ring.',
    how: null,
  },
  'rosette.rings[].hiddenMm': {
    name: 'Hidden, along the ring',
    what: 'The same as a length along the middle of the ring.',
    how: null,
  },
  'rosette.rings[].gapRad': {
    name: 'Gap, as an angle',
    what: 'Angle of the gap left open under the board.',
    how: null,
  },
  'rosette.rings[].gapMm': {
    name: 'Gap',
    what: 'Length of the gap left open under the board, along the middle of the ring.',
    how: 'Rule between the ends of the strip.',
  },
  'rosette.rings[].stripLengthMm': {
    name: 'Strip length',
    what: 'Length of the strip to bend in, along the middle of the ring.',
    how: 'Tape along the strip.',
  },
  'rosette.rings[].visibleRad': {
    name: 'Arc that shows',
    what: 'Angle of the ring that is left in sight beside the board.',
    how: null,
  },
  'rosette.rings[].innerCutterCircleMm': {
    name: 'Cutter circle, inner wall',
    what: 'Radius on which the centre of the cutter runs for the inner wall.',
    how: 'Caliper from the pivot pin to the middle of the cutter.',
  },
  'rosette.rings[].outerCutterCircleMm': {
    name: 'Cutter circle, outer wall',
    what: 'Radius on which the centre of the cutter runs for the outer wall.',
    how: 'Caliper from the pivot pin to the middle of the cutter.',
  },
  'rosette.rings[].passes': {
    name: 'Passes',
    what: 'Circles the cutter has to run, with the stated overlap, to clear the channel.',
    how: null,
  },
  'rosette.rings[].tileRad': {
    name: 'Angle of a tile',
    what: 'Angle each tile or wedge takes up round the ring.',
    how: null,
  },
  'rosette.rings[].tileLengthMm': {
    name: 'Length of a tile',
    what: 'Length each tile or wedge takes up along the middle of the ring.',
    how: null,
  },
}
