import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

export const CUTAWAY_WORDS: Record<KeysUnder<'cutaway'>, NumberTexts> = {
  'cutaway.trebleLengthMm': {
    what: 'Way round the outer face of a treble side of its own, from the tail to where its wood ends; none where it mirrors the bass side.',
    how: 'Tape round the outside of the treble side, from the tail centre.',
    formula: 'Sum of the lengths of all pieces of the treble half; an arc counts R × sweep in radians, R its radius.',
    from: 'Arc length; derived.',
  },
  'cutaway.hornAtMm': {
    what: 'Where the tip of the cutaway’s horn stands along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'x of the corner of a pointed horn; of a rounded one, where its arc comes nearest to the neck.',
    from: 'Closed form on the arc; derived.',
  },
  'cutaway.hornHalfWidthMm': {
    what: 'From the centreline to the outer face at the tip of the cutaway’s horn.',
    how: 'Rule square out from the centreline to the tip.',
    formula: 'y of the corner of a pointed horn; of a rounded one, where its arc comes nearest to the neck.',
    from: 'Closed form on the arc; derived.',
  },
  'cutaway.hornOnRimMm': {
    what: 'Where the tip of the cutaway’s horn lies on the bent treble side, along its outer face from the tail.',
    how: 'Tape round the outside of the treble side, from the tail centre.',
    formula: 'Length of the treble outline from the tail to the tip.',
    from: 'Arc length; derived.',
  },
  'cutaway.hornAngleRad': {
    what: 'Between the two pieces of the treble side where they meet in a pointed horn, in the wood; none on a rounded one.',
    how: 'Bevel gauge over the corner, stock and blade on the outer faces.',
    formula: 'π − c: c the turn of the outline at the corner, in radians.',
    from: 'Directions of the outline on both sides of the corner; derived.',
  },
  'cutaway.angleAtNeckRad': {
    what: 'Between the end of the hollow and the centreline: plus where it still closes in, minus where it opens outward.',
    how: 'Bevel gauge at the neck joint, stock along the centreline.',
    formula: 'Direction of the hollow’s arc where it meets the line of the neck joint.',
    from: 'Tangent of the arc at its end; derived.',
  },
  'cutaway.runsOnMm': {
    what: 'How far the bass side goes past the centreline, over the neck block, to the cut at the cutaway.',
    how: 'Rule across the neck end, from the centreline.',
    formula: 'The half-width at which the hollow meets the neck, as entered. None without a cutaway.',
    from: ENTERED.from,
  },
}
