import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'
import { stringName } from './stringName.ts'

type BridgeCode = Extract<
  FindingCode,
  | 'saddleTooLow'
  | 'breakAngleSmall'
  | 'breakAngleGreat'
  | 'holdsInSlot'
  | 'slotSlantsOnBridge'
  | 'saddleSlotTooDeep'
  | 'saddleOffBridge'
  | 'octaveOutOfReach'
  | 'saddleTooNarrow'
  | 'holdsOffBridge'
  | 'plateMissesBridge'
>

const isMinus = (value: number | null) => value !== null && value < 0
const reaches = (mm: number | null): string => (isMinus(mm) ? 'falls short by' : 'reaches')

/** Bridge and saddle. */
export const BRIDGE_FINDINGS: WritersFor<BridgeCode> = {
  saddleTooLow: ({ size, number }) => ({
    title: (number('showingMm') ?? 1) <= 0 ? 'The saddle does not reach a string' : 'Little of the saddle shows',
    sentence: isMinus(number('showingMm'))
      ? `Under ${stringName(number('string'))} its crown would lie ${size('showingMm', 'thickness') ?? 'a little'} below the bridge’s top.`
      : `Under ${stringName(number('string'))} it stands only ${size('showingMm', 'thickness') ?? 'a little'} over the bridge.`,
    mend: 'Saddle showing: make it more. Or a thinner bridge.',
  }),
  breakAngleSmall: ({ value, number }) => ({
    title: 'A string hardly bends over the saddle',
    sentence: `Over the saddle ${stringName(number('string'))} bends down by ${value('breakRad', 'angle') ?? 'little'}; under 6° it may not press enough to sound well.`,
    mend: 'Saddle to pins or holes: make it less. Or more Saddle showing. With pins, ramps cut from their holes help as well.',
  }),
  breakAngleGreat: ({ value, number }) => ({
    title: 'A string bends steeply over the saddle',
    sentence: `Over the saddle ${stringName(number('string'))} bends down by ${value('breakRad', 'angle') ?? 'a steep angle'}; over 60° it may bind there and push the saddle over.`,
    mend: 'Saddle to pins or holes: make it more. Or less Saddle showing.',
  }),
  holdsInSlot: ({ size, number }) => ({
    title: (number('woodMm') ?? 1) <= 0 ? 'A hole meets the saddle slot' : 'A hole stands close to the saddle slot',
    sentence: isMinus(number('woodMm'))
      ? `The hole for ${stringName(number('string'))} reaches ${size('woodMm', 'thickness') ?? 'a little'} past the slot’s back wall.`
      : `Between the hole for ${stringName(number('string'))} and the slot’s back wall ${size('woodMm', 'thickness') ?? 'little'} of wood stands, a pin taken as 5 mm thick; 3 mm is usual.`,
    mend: 'Saddle to pins or holes: make it more. Or Line of pins or holes: along the saddle.',
  }),
  slotSlantsOnBridge: ({ value }) => ({
    title: 'The saddle slants on a square bridge',
    sentence: `The bridge is planned square to the centreline; its slot slants by ${value('slantRad', 'angle') ?? 'some degrees'}, and its ends differ by ${value('differMm', 'bodyLength') ?? 'some way'}.`,
    mend: 'Look whether Bridge width holds it. Or take the Square fret nearer the saddle, or turn the bridge to the slot when you make it.',
  }),
  saddleSlotTooDeep: ({ size, number }) => ({
    title:
      (number('leftMm') ?? 1) <= 0 ? 'The saddle slot cuts the bridge through' : 'Little bridge is left under the slot',
    sentence: isMinus(number('leftMm'))
      ? `It is ${size('leftMm', 'thickness') ?? 'a little'} deeper than the bridge is thick.`
      : `Under the slot only ${size('leftMm', 'thickness') ?? 'little'} of the bridge is left.`,
    mend: 'Saddle slot, depth: make it less. Or a thicker bridge.',
  }),
  saddleOffBridge: ({ value }) => ({
    title: 'The saddle slot runs off the bridge',
    sentence: `With its slant and lean it reaches ${value('byMm', 'thickness') ?? 'a little'} beyond the bridge’s edge.`,
    mend: 'Front edge to saddle, or Bridge width.',
  }),
  octaveOutOfReach: ({ number }) => ({
    title: 'No place of the saddle gives a true octave',
    sentence: `Pressed to fret 12 ${stringName(number('string'))} sounds so sharp that no estimate can be given: it is slack, thick, or far over the frets.`,
    mend: 'Strings: look for a slip in note, mass or core. Or less Action.',
  }),
  saddleTooNarrow: ({ value, number }) => ({
    title: 'One crown would leave the saddle',
    sentence: `By estimate ${stringName(number('string'))} wants its crown ${value('byMm', 'thickness') ?? 'far'} off the saddle’s middle; the saddle has ${value('halfMm', 'thickness') ?? 'less'} to either side of it.`,
    mend: 'Compensation, bass and treble: look at both. Or more for Saddle slot, width, or a saddle in two parts.',
  }),
  holdsOffBridge: ({ size, number }) => ({
    title: isMinus(number('byMm')) ? 'A hole misses the bridge' : 'The pins stand close to the bridge’s back edge',
    sentence: isMinus(number('byMm'))
      ? `The rearmost lies ${size('byMm', 'thickness') ?? 'a little'} behind the bridge’s back edge.`
      : `Behind the middle of the rearmost only ${size('byMm', 'thickness') ?? 'little'} of the bridge is left.`,
    mend: 'Saddle to pins or holes: make it less. Or a wider bridge.',
  }),
  plateMissesBridge: ({ size, number }) => ({
    title: 'The bridge plate is too short for the bridge',
    sentence: `It ${reaches(number('behindMm'))} ${size('behindMm', 'bodyLength') ?? 'a little'} behind the pins and ${reaches(number('beforeMm'))} ${size('beforeMm', 'bodyLength') ?? 'a little'} before the saddle.`,
    mend: 'Bridge plate begins at, or ends at.',
  }),
}
