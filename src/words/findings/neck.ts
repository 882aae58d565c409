import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'
import { stringName } from './stringName.ts'

type NeckCode = Extract<
  FindingCode,
  | 'boardEndsBeforeJoint'
  | 'slotTooDeep'
  | 'fretPastBoardEnd'
  | 'nutSlants'
  | 'tangDeeperThanSlot'
  | 'tangDeeperAtEdge'
  | 'boardEdgeThin'
  | 'stringsOffBoard'
  | 'stringsTooClose'
  | 'stringMassUnknown'
  | 'stringSlack'
  | 'stringOverstressed'
  | 'flatTooNearSaddle'
  | 'neckTooSteep'
  | 'boardStandsInTop'
  | 'boardStandsFree'
  | 'rodTooDeep'
  | 'rodMeetsBolt'
  | 'rodEntersBody'
  | 'rodTooShort'
  | 'tenonTooDeep'
  | 'tenonTooWide'
  | 'boltOffHeel'
  | 'headTooThin'
  | 'postOffHead'
  | 'nutAngleUnusual'
  | 'stringBendsAtNut'
>

/** 0 bass, 1 treble. */
const sideName = (side: number | null): string => (side === 1 ? 'treble' : side === 0 ? 'bass' : 'one')

const isMinus = (value: number | null) => value !== null && value < 0

/** Board, strings, neck set, neck and head. */
export const NECK_FINDINGS: WritersFor<NeckCode> = {
  boardEndsBeforeJoint: ({ value }) => ({
    title: 'The board ends before the joint',
    sentence: `Its end stands ${value('byMm', 'bodyLength') ?? 'short'} before the edge of the body.`,
    mend: 'Frets: give it more. Or a lower Fret at the joint.',
  }),
  slotTooDeep: ({ size, number }) => ({
    title: (number('leftMm') ?? 1) <= 0 ? 'The slots cut the board through' : 'Little board is left under the slots',
    sentence: isMinus(number('leftMm'))
      ? `They reach ${size('leftMm', 'thickness') ?? 'a little'} deeper than the board is thick.`
      : `Only ${size('leftMm', 'thickness') ?? 'little'} of wood stays under the bottom of the slots.`,
    mend: 'Slot depth: make it less. Or a thicker board.',
  }),
  tangDeeperThanSlot: ({ value }) => ({
    title: 'The tang is deeper than the slots',
    sentence: `The tang is ${value('tangMm', 'thickness') ?? 'deeper'}; the slots are only ${value('slotMm', 'thickness') ?? 'less'}.`,
    mend: 'Slot depth: make it more. Or a wire with a shallower Fret tang.',
  }),
  tangDeeperAtEdge: ({ value }) => ({
    title: 'A straight slot is too shallow at the edge',
    sentence: `The tang is ${value('tangMm', 'thickness') ?? 'deeper'}; sawn straight, the shallowest slot is ${value('slotMm', 'thickness') ?? 'less'} at the board’s edge, where the board falls away.`,
    mend: 'Let the slots follow the radius. Or more Slot depth, or a wire with a shallower Fret tang.',
  }),
  fretPastBoardEnd: ({ value, number }) => ({
    title: 'The last fret runs off the board’s end',
    sentence: `At the ${sideName(number('side'))} edge its end lies ${value('byMm', 'bodyLength') ?? 'a little'} beyond the board’s square end.`,
    mend: 'End beyond the last fret: give it that much more. Or a Square fret nearer the body, or scales closer together.',
  }),
  nutSlants: ({ value, number }) => ({
    title: 'The nut slants, the head is drawn square',
    sentence: `The nut’s ${sideName(number('side'))} end stands ${value('byMm', 'bodyLength') ?? 'a little'} nearer the head than its other end.`,
    mend: 'Leave the head that room before its face begins, and measure posts from the nut’s middle. Or take the nut as Square fret: 0.',
  }),
  boardEdgeThin: ({ size, number }) => ({
    title: (number('edgeMm') ?? 1) <= 0 ? 'The board has no edge left' : 'The board’s edge is thin',
    sentence: isMinus(number('edgeMm'))
      ? `Somewhere along it the radius falls ${size('edgeMm', 'thickness') ?? 'a little'} lower than the board is thick.`
      : `Somewhere along it the edge is only ${size('edgeMm', 'thickness') ?? 'thin'}.`,
    mend: 'Board thickness: make it more. Or a larger Board radius.',
  }),
  stringsOffBoard: ({ size, number }) => ({
    title: isMinus(number('leastMm')) ? 'A string runs off the board' : 'A string runs close to the board’s edge',
    sentence: isMinus(number('leastMm'))
      ? `An outer string runs up to ${size('leastMm', 'thickness') ?? 'a little'} beyond the board’s edge.`
      : `Beside an outer string ${size('leastMm', 'thickness') ?? 'hardly any'} of board is left at its narrowest.`,
    mend: 'Spread at the nut or Spread at the saddle: make it less. Or a wider board.',
  }),
  stringsTooClose: ({ size, number }) => ({
    title: isMinus(number('gapMm')) ? 'Strings overlap at the nut' : 'The strings stand too close at the nut',
    sentence: isMinus(number('gapMm'))
      ? `Neighbours lie ${size('gapMm', 'thickness') ?? 'a little'} over each other.`
      : `Between neighbours there is only ${size('gapMm', 'thickness') ?? 'little room'}.`,
    mend: 'Spread at the nut: make it more.',
  }),
  stringMassUnknown: ({ number }) => ({
    title: 'The mass of a wound string is not known',
    sentence:
      number('count') === 1
        ? `No mass is entered for ${stringName(number('string'))} so the sums of pull and torque leave it out.`
        : `No mass is entered for ${number('count') ?? 'some'} strings, the first of them ${stringName(number('string'))} so the sums of pull and torque leave them out.`,
    mend: 'Strings: enter the mass the string’s maker states.',
  }),
  stringSlack: ({ value, number }) => ({
    title: 'A string is slack',
    sentence: `At pitch ${stringName(number('string'))} pulls only ${value('tensionN', 'force') ?? 'a little'}; a set usually pulls over 40 N on steel and over 20 N on nylon.`,
    mend: 'Strings: look at its note, an octave may be wrong, and at its diameter or mass.',
  }),
  stringOverstressed: ({ value, number }) => ({
    title: 'A string is near breaking',
    sentence: `At pitch ${stringName(number('string'))} would stand at ${value('stressMPa', 'stress') ?? 'a high stress'}; wire breaks somewhere over 2500 MPa.`,
    mend: 'Strings: tune it lower. Or a shorter Scale length. Cover your eyes when bringing it up.',
  }),
  flatTooNearSaddle: ({ value }) => ({
    title: 'The flat begins too near the saddle',
    sentence: `Only ${value('leverMm', 'bodyLength') ?? 'little'} lies between the saddle and where the flat begins; under ${value('leastMm', 'bodyLength') ?? 'some length'} the neck set cannot be told from it.`,
    mend: 'Flat begins at: move it toward the neck. Or give “The flat falls” a figure of your own.',
  }),
  neckTooSteep: ({ size, number }) => ({
    title: 'The neck would have to lean too far',
    sentence: `The heights ask it to lean ${isMinus(number('angleRad')) ? 'forward' : 'back'} by more than ${size('angleRad', 'angle') ?? 'a neck can'}; it is held there.`,
    mend: 'Bridge thickness, Saddle showing, Board thickness or Action: look for a slip.',
  }),
  boardStandsInTop: ({ value, leadsTo }) => ({
    title: 'The top is in the board’s way',
    sentence: `${value('fromJointMm', 'bodyLength') ?? 'Somewhere'} from the joint the board’s underside runs ${value('byMm', 'thickness') ?? 'a little'} inside the top.`,
    mend: leadsTo('top.form')
      ? 'Form of the top: plane its upper bout flat and let it fall as the neck set asks, so that the board lies on it. Or a thicker bridge, or a thinner board.'
      : 'Flat begins at: begin it before the board’s end. Or a thicker bridge, or a thinner board.',
  }),
  boardStandsFree: ({ value }) => ({
    title: 'The board’s end stands free',
    sentence: `${value('fromJointMm', 'bodyLength') ?? 'Somewhere'} from the joint there is ${value('gapMm', 'thickness') ?? 'room'} between board and top.`,
    mend: 'Plan a wedge under it. Or less Bridge thickness or Saddle showing, or more Board thickness.',
  }),
  rodTooDeep: ({ size, number }) => ({
    title: isMinus(number('woodMm'))
      ? 'The rod’s channel comes through the neck'
      : (number('woodMm') ?? 5) < 2
        ? 'Too little wood is left behind the rod'
        : 'Little wood is left behind the rod',
    sentence: isMinus(number('woodMm'))
      ? `At the thinnest place it reaches ${size('woodMm', 'thickness') ?? 'a little'} beyond the neck’s back.`
      : `Behind the channel only ${size('woodMm', 'thickness') ?? 'little'} is left at the thinnest place; 5 mm is usual, under 2 mm it comes through in carving.`,
    mend: 'Rod channel, depth: make it less. Or a thicker neck, or a thinner board.',
  }),
  rodMeetsBolt: ({ size, number }) => ({
    title: isMinus(number('clearMm')) ? 'The rod’s channel meets a bolt' : 'The rod’s channel comes close to a bolt',
    sentence: isMinus(number('clearMm'))
      ? `Where it comes over the first bolt it runs ${size('clearMm', 'thickness') ?? 'a little'} into the first bolt’s way.`
      : `Where it comes over the first bolt only ${size('clearMm', 'thickness') ?? 'little'} is left between them.`,
    mend: 'Bolts or dowels at: place the first one lower. Or a shorter rod.',
  }),
  rodEntersBody: ({ value }) => ({
    title: 'The rod’s channel runs into the box',
    sentence: `It reaches ${value('byMm', 'bodyLength') ?? 'on'} past what enters the neck block: block and upper cross brace need a way through for it.`,
    mend: 'Rod channel, length: make it less. Or let it begin nearer the head.',
  }),
  rodTooShort: ({ value }) => ({
    title: 'The rod ends well before the body',
    sentence: `Its channel ends ${value('byMm', 'bodyLength') ?? 'some way'} before the joint: the neck over that stretch is not held.`,
    mend: 'Rod channel, length: make it more. Or begin it nearer the body.',
  }),
  tenonTooDeep: ({ size, number }) => ({
    title: isMinus(number('leftMm')) ? 'The tenon comes through the block' : 'Little block is left behind the tenon',
    sentence: isMinus(number('leftMm'))
      ? `It is ${size('leftMm', 'bodyLength') ?? 'a little'} longer than the block is thick.`
      : `Behind it only ${size('leftMm', 'bodyLength') ?? 'little'} of the block is left.`,
    mend: 'Tenon, depth: make it less. Or a thicker neck block.',
  }),
  tenonTooWide: ({ size, number }) => ({
    title: isMinus(number('leftMm')) ? 'The tenon is wider than the block' : 'Little block is left beside the tenon',
    sentence: isMinus(number('leftMm'))
      ? `On either side it stands ${size('leftMm', 'bodyLength') ?? 'a little'} beyond the block.`
      : `On either side only ${size('leftMm', 'bodyLength') ?? 'little'} of the block is left.`,
    mend: 'Tenon, width: make it less. Or a wider neck block.',
  }),
  boltOffHeel: ({ size, number }) => ({
    title: isMinus(number('leftMm')) ? 'A bolt misses the heel' : 'A bolt is close to the heel’s end',
    sentence: isMinus(number('leftMm'))
      ? `The lowest bolt stands ${size('leftMm', 'bodyLength') ?? 'some way'} past the heel’s end.`
      : `Between the lowest bolt and the back only ${size('leftMm', 'bodyLength') ?? 'little'} is left.`,
    mend: 'Bolts or dowels at: place it higher.',
  }),
  headTooThin: ({ size, number }) => ({
    title: 'The head is thin between its veneers',
    sentence: isMinus(number('coreMm'))
      ? `The veneers together are ${size('coreMm', 'thickness') ?? 'a little'} thicker than the head.`
      : `Of the neck’s own wood only ${size('coreMm', 'thickness') ?? 'little'} is left there.`,
    mend: 'Head thickness: make it more. Or thinner veneers.',
  }),
  postOffHead: ({ size, number }) => ({
    title: isMinus(number('leftMm')) ? 'A tuner misses the head' : 'A tuner stands close to the head’s end',
    sentence: isMinus(number('leftMm'))
      ? `The hole for ${stringName(number('string'))} reaches ${size('leftMm', 'bodyLength') ?? 'some way'} beyond the head’s end.`
      : `Between the hole for ${stringName(number('string'))} and the head’s end only ${size('leftMm', 'bodyLength') ?? 'little'} is left.`,
    mend: 'Head length: make it more. Or less for Post to post or Nut to the nearest post.',
  }),
  nutAngleUnusual: ({ value, number }) => ({
    title: 'A string bends unusually over the nut',
    sentence: `Over the nut ${stringName(number('string'))} bends down by ${value('overNutRad', 'angle') ?? 'an unusual angle'}; 7° to 15° is usual on posts, up to 26° over slots.`,
    mend: 'Head angle: bring it nearer that. Or change String at the post or Nut to the nearest post.',
  }),
  stringBendsAtNut: ({ size, number }) => ({
    title: 'A string turns far sideways at the nut',
    sentence: `At the nut ${stringName(number('string'))} turns ${isMinus(number('sideRad')) ? 'inward' : 'outward'} by ${size('sideRad', 'angle') ?? 'a wide angle'}; it may bind in its slot.`,
    mend: 'Nearest post or Furthest post, across: bring the posts nearer the string’s own line. Or move them further from the nut.',
  }),
}
