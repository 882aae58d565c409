import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'
import { stringName } from './stringName.ts'

type NeckCode = Extract<
  FindingCode,
  | 'boardEndsBeforeJoint'
  | 'slotTooDeep'
  | 'tangDeeperThanSlot'
  | 'boardEdgeThin'
  | 'stringsOffBoard'
  | 'stringsTooClose'
  | 'stringMassUnknown'
  | 'stringOverstressed'
  | 'flatTooNearSaddle'
  | 'neckTooSteep'
  | 'boardStandsInTop'
  | 'boardStandsFree'
  | 'rodTooDeep'
  | 'rodMeetsBolt'
  | 'rodEntersBody'
  | 'tenonTooDeep'
  | 'tenonTooWide'
  | 'boltOffHeel'
  | 'headTooThin'
  | 'nutAngleUnusual'
  | 'stringBendsAtNut'
>

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
    title: 'The tang is deeper than the slot at the edge',
    sentence: `The tang is ${value('tangMm', 'thickness') ?? 'deeper'}; at the board’s edge the shallowest slot is ${value('slotMm', 'thickness') ?? 'less'}, since its bottom is straight and the board falls away.`,
    mend: 'Slot depth: make it more. Or a wire with a shallower Fret tang, or saw after the board is radiused, following it.',
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
    sentence: `${number('count') ?? 'Some'} of the strings ${number('count') === 1 ? 'has' : 'have'} no mass, so the sums of pull and torque leave ${number('count') === 1 ? 'it' : 'them'} out.`,
    mend: 'Strings: enter the mass the string’s maker states.',
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
      : 'Little wood is left behind the rod',
    sentence: isMinus(number('woodMm'))
      ? `At the thinnest place it reaches ${size('woodMm', 'thickness') ?? 'a little'} beyond the neck’s back.`
      : `Behind the channel only ${size('woodMm', 'thickness') ?? 'little'} is left at the thinnest place; 5 mm is usual.`,
    mend: 'Rod channel, depth: make it less. Or a thicker neck, or a thinner board.',
  }),
  rodMeetsBolt: ({ size, number }) => ({
    title: isMinus(number('clearMm')) ? 'The rod’s channel meets a bolt' : 'The rod’s channel comes close to a bolt',
    sentence: isMinus(number('clearMm'))
      ? `It runs past the joint and ${size('clearMm', 'thickness') ?? 'a little'} into the first bolt’s way.`
      : `It runs past the joint, and between it and the first bolt only ${size('clearMm', 'thickness') ?? 'little'} is left.`,
    mend: 'Bolts or dowels at: place the first one lower. Or a shorter rod.',
  }),
  rodEntersBody: ({ value }) => ({
    title: 'The rod’s channel runs into the box',
    sentence: `It reaches ${value('byMm', 'bodyLength') ?? 'on'} past what enters the neck block: block and upper cross brace need a way through for it.`,
    mend: 'Rod channel, length: make it less. Or let it begin nearer the head.',
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
