import type { KeysUnder, NumberTexts } from './numberWords.ts'

type Key = KeysUnder<'braceArch' | 'braceCrossings' | 'patches' | 'jointStrip' | 'bridgePlate'>

const PLAIN = 'Plain sum; derived.'
const AS_ENTERED = { formula: 'As entered.', from: 'Entered, not computed.' } as const
const CROSS = 'Crossing of two straight lines; derived.'
const COUNTED = 'Entered order, not computed.'

const notchWords = (one: string, other: string): NumberTexts => ({
  what: `How wide the notch is along the brace counted ${one}; none where they are not both lapped.`,
  how: 'Caliper in the notch, along the brace.',
  formula: `b ÷ sin a, at most the whole brace: b width of the brace counted ${other}, a the angle between them.`,
  from: CROSS,
})

export const BRACING_NUMBER_WORDS: Record<Key, NumberTexts> = {
  'braceArch[].number': {
    what: 'The brace this place is on, by its number.',
    how: null,
    formula: 'Counted as the braces are.',
    from: COUNTED,
  },
  'braceArch[].alongMm': {
    what: 'From the first end of the brace, in plan.',
    how: null,
    formula: 'L × n ÷ 8: L length of the brace, n counted from 0 to 8.',
    from: 'Even division; derived.',
  },
  'braceArch[].riseMm': {
    what: 'Gluing face over a straight line between its ends: ordinates of the arch template.',
    how: null,
    formula: 'Plate there − the straight line from end to end; of its own arch that arc; nothing on a flat one.',
    from: 'Section of the plate, or sagitta of a chord; derived.',
  },
  'braceArch[].heightMm': {
    what: 'Wood over the gluing face there, as the tapers leave it.',
    how: null,
    formula:
      'e + (H − e) × u ÷ T, a scoop with the square of u ÷ T: e end height, H height, u from the tip, T the taper.',
    from: 'Derived; that a scoop is close to a parabola is common practice.',
  },
  'braceCrossings[].number': {
    what: 'The brace counted first of the two that cross.',
    how: null,
    formula: 'Counted as the braces are.',
    from: COUNTED,
  },
  'braceCrossings[].otherNumber': {
    what: 'The brace counted second of the two that cross.',
    how: null,
    formula: 'Counted as the braces are.',
    from: COUNTED,
  },
  'braceCrossings[].xMm': {
    what: 'Where their middles cross, from the tail along the centreline.',
    how: 'Rule along the centreline from the tail.',
    formula: 'Where the two straight lines in plan meet.',
    from: CROSS,
  },
  'braceCrossings[].acrossMm': {
    what: 'Where their middles cross, from the centreline; the bass side is negative.',
    how: 'Rule square across from the centreline.',
    formula: 'Where the two straight lines in plan meet.',
    from: CROSS,
  },
  'braceCrossings[].alongMm': {
    what: 'Where the lap is, from the first end of the brace counted first.',
    how: 'Rule along the brace from its first end.',
    formula: 'From its first end to the crossing.',
    from: CROSS,
  },
  'braceCrossings[].otherAlongMm': {
    what: 'Where the lap is, from the first end of the brace counted second.',
    how: 'Rule along the brace from its first end.',
    formula: 'From its first end to the crossing.',
    from: CROSS,
  },
  'braceCrossings[].angleRad': {
    what: 'The smaller angle between the two.',
    how: 'Protractor between the two.',
    formula: 'Difference of their directions in plan.',
    from: CROSS,
  },
  'braceCrossings[].lapMm': {
    what: 'How deep each is cut for the other; none where they are not both lapped.',
    how: 'Depth gauge in the notch.',
    formula: 'Half the height the lower of the two has there.',
    from: 'A half lap, common practice; derived from the heights.',
  },
  'braceCrossings[].underNumber': {
    what: 'Which of the two is notched in its gluing face: the one counted second. The other is notched in its free face, and goes over it. None where they are not both lapped.',
    how: null,
    formula: 'The brace counted second.',
    from: 'Entered order. Either may lie under the other in a half lap; one rule for all keeps them apart.',
  },
  'braceCrossings[].notchMm': notchWords('first', 'second'),
  'braceCrossings[].otherNotchMm': notchWords('second', 'first'),
  'patches.holeRing.innerRadiusMm': {
    what: 'Inner edge of the ring of wood round the hole, on the inside; none without one.',
    how: 'Caliper across the ring’s hole, halved.',
    formula: 'Radius of the hole + what the ring is set back.',
    from: PLAIN,
  },
  'patches.holeRing.outerRadiusMm': {
    what: 'Outer edge of the ring of wood round the hole, on the inside; none without one.',
    how: 'Caliper across the ring, halved.',
    formula: 'Inner radius + width of the ring.',
    from: PLAIN,
  },
  'patches.holeRing.thicknessMm': {
    what: 'Of the ring of wood round the hole.',
    how: 'Caliper on the ring.',
    ...AS_ENTERED,
  },
  'patches.cross.count': {
    what: 'Patches over lapped crossings of the top’s braces.',
    how: null,
    formula: 'Lapped crossings of the top, counted; none where the patch has no size.',
    from: 'Counted; derived.',
  },
  'patches.cross.sideMm': { what: 'Of the square patch.', how: 'Rule along each side.', ...AS_ENTERED },
  'patches.cross.thicknessMm': { what: 'Of the patch over a crossing.', how: 'Caliper on the patch.', ...AS_ENTERED },
  'patches.strip.widthMm': {
    what: 'Of the strip over the back’s joint, inside.',
    how: 'Caliper across the strip.',
    ...AS_ENTERED,
  },
  'patches.strip.thicknessMm': { what: 'Of the strip’s wood.', how: 'Caliper on the strip.', ...AS_ENTERED },
  'patches.strip.lengthMm': {
    what: 'All pieces of the strip together, without waste.',
    how: null,
    formula: 'Sum of the pieces.',
    from: PLAIN,
  },
  'jointStrip[].fromMm': {
    what: 'Tail end of one piece of the strip inside, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'The tail block’s inner face, or the flank of the brace before.',
    from: 'Outline of each back brace cut with the strip’s two edges; derived.',
  },
  'jointStrip[].toMm': {
    what: 'Neck end of one piece of the strip inside, from the tail.',
    how: 'Rule along the centreline from the tail, to the other end.',
    formula: 'The flank of the next brace, or the neck block’s inner face.',
    from: 'Outline of each back brace cut with the strip’s two edges; derived.',
  },
  'jointStrip[].lengthMm': {
    what: 'Of one piece between two braces, or between a brace and a block, its ends cut square.',
    how: 'Caliper along the piece.',
    formula: 'Where it ends − where it begins.',
    from: 'Plain difference; derived.',
  },
  'bridgePlate.fromTailMm': {
    what: 'Where the plate’s edge toward the tail stands; none without a plate.',
    how: 'Rule along the centreline from the tail.',
    ...AS_ENTERED,
  },
  'bridgePlate.lengthMm': {
    what: 'Between its tail edge and its neck edge.',
    how: 'Caliper along the centreline.',
    formula: 'Where it ends − where it begins.',
    from: 'Plain difference; derived.',
  },
  'bridgePlate.tailWidthMm': {
    what: 'Whole width at the edge toward the tail.',
    how: 'Rule along that edge.',
    ...AS_ENTERED,
  },
  'bridgePlate.neckWidthMm': {
    what: 'Whole width at the edge toward the neck.',
    how: 'Rule along that edge.',
    ...AS_ENTERED,
  },
  'bridgePlate.thicknessMm': { what: 'None without a plate.', how: 'Caliper on the plate.', ...AS_ENTERED },
  'bridgePlate.wingsBeyondMm': {
    what: 'How far either wing of the bridge reaches past the plate; minus where the plate reaches further.',
    how: null,
    formula: 'Half the bridge’s length − half the plate’s width under the middle of the bridge.',
    from: 'Plain difference; derived. Where the bridge stands hangs on compensation, an estimate.',
  },
  'bridgePlate.besidePinsMm': {
    what: 'How far the plate reaches sideways past the outermost pin or hole; minus where it falls short.',
    how: null,
    formula: 'Half the plate’s width at the pin or hole − its distance from the centreline; the least of all.',
    from: 'Plain difference; derived. Where pins and holes stand hangs on compensation, an estimate.',
  },
  'bridgePlate.toBraceMm': {
    what: 'Room between the plate and the nearest brace of the top; minus where it lies over one. Fans and patches do not count.',
    how: null,
    formula: 'Least distance of the two outlines in plan; where they overlap, the least way apart.',
    from: 'Two outlines with straight edges; derived.',
  },
}
