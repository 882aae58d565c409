import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type BracingCode = Extract<FindingCode, `brace${string}` | 'rodOrBoltMeetsBrace' | 'plateMissesFeet' | 'plateOverBrace'>

/** A brace is known by its number on the sheet. */
const braceName = (number: number | null): string => (number === null ? 'one brace' : `brace ${number}`)
const BraceName = (number: number | null): string => (number === null ? 'One brace' : `Brace ${number}`)

const endName = (end: number | null): string => (end === 1 ? 'second end' : 'first end')

/** Braces and the plate under the bridge. */
export const BRACING_FINDINGS: WritersFor<BracingCode> = {
  braceHasNoLength: ({ number }) => ({
    title: 'A brace has no length',
    sentence: `Both ends of ${braceName(number('brace'))} come out in one place, or in the lining, so that nothing is left of it.`,
    mend: 'Braces: give its two ends places apart from each other.',
  }),
  braceOutsideRim: ({ number }) => ({
    title: 'A brace stands outside the sides',
    sentence: `${BraceName(number('brace'))} has an end or a stretch beyond the inner face of the sides.`,
    mend: 'Braces: move its ends inward, or end it at the rim.',
  }),
  braceMeetsNothing: ({ number }) => ({
    title: 'A brace never meets the one it is to stop at',
    sentence: `${BraceName(number('brace'))} is to stop at another brace, but its line crosses none of them there. It is drawn to the place entered.`,
    mend: 'Braces: turn it toward that brace, choose another one to stop at, or end it at the rim.',
  }),
  bracesCollide: ({ number, value, size }) => {
    const crosses = number('crossMm') !== null
    const both = `${BraceName(number('brace'))} and ${braceName(number('other'))}`
    return {
      title: crosses ? 'Two braces cross without a lap' : 'Two braces stand in the same place',
      sentence: crosses
        ? `${both} cross at ${value('crossMm', 'bodyLength') ?? 'one place'} from the tail and share ${size('byMm', 'thickness') ?? 'some'} of the first one’s length there.`
        : `${both} run into each other by ${size('byMm', 'thickness') ?? 'a little'}.`,
      mend: 'Braces, Crossings: lap both where they cross. Or let one stop at the other, or move one.',
    }
  },
  braceLetInTooDeep: ({ number, size }) => ({
    title: 'A brace is let in deeper than its lining',
    sentence: `The ${endName(number('end'))} of ${braceName(number('brace'))} is let in ${size('letInMm', 'thickness') ?? 'deep'}, but along it the lining is only ${size('liningMm', 'thickness') ?? 'less'} wide. The brace stops at the side.`,
    mend: `Braces, Let in: at most ${size('liningMm', 'thickness') ?? 'the lining'}. Or the lining, width: make it more.`,
  }),
  braceEndTooHigh: ({ number, size }) => ({
    title: 'The end of a brace is higher than the brace',
    sentence: `The ${endName(number('end'))} of ${braceName(number('brace'))} is to be left ${size('endMm', 'thickness') ?? 'higher'} high; the brace itself is ${size('heightMm', 'thickness') ?? 'lower'}. It is worked out as ${size('heightMm', 'thickness') ?? 'high as the brace'}, without a taper.`,
    mend: `Braces, Height at the end: at most ${size('heightMm', 'thickness') ?? 'the height of the brace'}. Or Height: make it more.`,
  }),
  braceEndBeyondBody: ({ number, value }) => ({
    title: 'A brace is to end where the body has no side',
    sentence: `The ${endName(number('end'))} of ${braceName(number('brace'))} is entered at ${value('wantedMm', 'bodyLength') ?? 'a place'} from the tail; the inner face of that side only reaches ${value('foundMm', 'bodyLength') ?? 'less far'}, and there it is drawn.`,
    mend: 'Braces, From the tail: a place between the two ends of the side.',
  }),
  braceThroughHole: ({ number, size }) => ({
    title: 'A brace runs through the soundhole',
    sentence: `${BraceName(number('brace'))} reaches ${size('byMm', 'thickness') ?? 'a little'} past the edge of the hole.`,
    mend: 'Braces: move it clear of the hole. Or Centre of the hole, or Radius of the hole.',
  }),
  braceOverHoleRing: ({ number, size }) => {
    const others = (number('count') ?? 1) - 1
    return {
      title: 'A brace lies over the ring round the hole',
      sentence: `The ring reaches from ${size('innerMm', 'bodyLength') ?? 'the hole'} to ${size('outerMm', 'bodyLength') ?? 'further out'} from the middle of the hole; ${braceName(number('brace'))}${others > 0 ? ` and ${others} more` : ''} lies over ${size('byMm', 'thickness') ?? 'a part'} of its width. Cut the ring to the flank there.`,
      mend: 'Ring round the hole: make it narrower. Or Ring set back by: make it less. Or Braces: move the one that is named.',
    }
  },
  braceTooTallInside: ({ number, size }) => ({
    title: 'A brace is taller than the box is deep',
    sentence: `${BraceName(number('brace'))} is ${size('heightMm', 'thickness') ?? 'too'} tall where only ${size('insideMm', 'thickness') ?? 'less'} lies between the plates.`,
    mend: 'Braces: make it lower. Or Rim depth at the tail or at the neck: make it more.',
  }),
  braceUnderBlock: ({ number, size }) => ({
    title: `A brace runs into the ${number('end') === 1 ? 'neck' : 'tail'} block`,
    sentence: `${BraceName(number('brace'))} and the block share ${size('byMm', 'thickness') ?? 'some'} of the same place.`,
    mend: `Braces: end it before the block, or move it. Or ${number('end') === 1 ? 'Neck' : 'Tail'} block, thickness: make it less.`,
  }),
  rodOrBoltMeetsBrace: ({ number }) => ({
    title: number('which') === 1 ? 'A brace stands in the spanner’s way' : 'A brace stands before the truss rod',
    sentence:
      number('which') === 1
        ? `${BraceName(number('brace'))} stands before a bolt of the neck, close to the block: a spanner hardly fits.`
        : `${BraceName(number('brace'))} stands where the rod, or the key to its nut, reaches into the box.`,
    mend:
      number('which') === 1
        ? 'Braces: move it further from the block, or make it lower. Or Bolts or dowels at: other places.'
        : 'Braces: move it, or notch it for the key. Or Rod channel, length: a shorter rod.',
  }),
  plateMissesFeet: ({ size, number }) => ({
    title: 'The bridge plate is narrow under the pins',
    sentence:
      (number('byMm') ?? 1) < 0
        ? `It falls short of the outermost pin by ${size('byMm', 'thickness') ?? 'a little'}.`
        : `It reaches only ${size('byMm', 'thickness') ?? 'a little'} past the outermost pin.`,
    mend: 'Bridge plate, width toward the tail or at its neck edge: make it more. Or a smaller Spread of the pins.',
  }),
  plateOverBrace: ({ number, size }) => ({
    title: 'The bridge plate lies over a brace',
    sentence: `Its edge lies over ${braceName(number('brace'))} by ${size('byMm', 'thickness') ?? 'a little'}.`,
    mend: 'Bridge plate, width toward the neck or at its tail edge: make it less. Or Braces: move the one that is named.',
  }),
}
