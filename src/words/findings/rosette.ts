import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type RosetteCode = Extract<
  FindingCode,
  `hole${string}` | `ring${string}` | `channel${string}` | `soundhole${string}` | 'boardCoversHole'
>

const isMinus = (value: number | null) => value !== null && value < 0
const ringName = (ring: number | null) => (ring === null ? 'A ring' : `Ring ${ring}`)

export const ROSETTE_FINDINGS: WritersFor<RosetteCode> = {
  holeOffBody: ({ size, number }) => ({
    title: isMinus(number('clearMm')) ? 'Hole or rings run off the body' : 'Hole or rings come too near the edge',
    sentence: isMinus(number('clearMm'))
      ? `They run over the edge by ${size('clearMm', 'bodyLength') ?? 'some way'}.`
      : `Only ${size('clearMm', 'bodyLength') ?? 'too little'} is left to the edge.`,
    mend: 'Centre of the hole: move it. Or make the Radius of the hole or the Rings smaller.',
  }),
  holeRingTooClose: ({ size, number }) => ({
    title: isMinus(number('clearMm')) ? 'The hole cuts into the first ring' : 'Hole and first ring are too close',
    sentence: isMinus(number('clearMm'))
      ? `The first ring begins ${size('clearMm', 'thickness') ?? 'some way'} inside the edge of the hole.`
      : `Only ${size('clearMm', 'thickness') ?? 'too little'} of wood is left between them, and that breaks out easily.`,
    mend: 'Radius of the hole: make it smaller. Or move the Rings outward.',
  }),
  ringInsideOut: ({ number }) => ({
    title: `${ringName(number('ring'))} is inside out`,
    sentence: 'Its outer radius is not larger than its inner radius.',
    mend: 'Rings: change one of its two radii.',
  }),
  ringsOverlap: ({ value, number }) => ({
    title: `${ringName(number('ring'))} runs into ${number('other') === null ? 'another' : `ring ${number('other')}`}`,
    sentence: `Their channels overlap by ${value('byMm', 'thickness') ?? 'a little'}.`,
    mend: 'Rings: change the radii so that wood is left between them.',
  }),
  ringGapShows: ({ value, number }) => ({
    title: `The gap of ${ringName(number('ring')).toLowerCase()} shows beside the board`,
    sentence:
      number('hiddenMm') === 0
        ? 'The board hides no part of the whole width of this ring.'
        : `The gap is ${value('gapMm', 'bodyLength') ?? 'too long'}; the board hides ${value('hiddenMm', 'bodyLength') ?? 'less'}, and a margin of ${value('marginMm', 'bodyLength') ?? 'some length'} is to stay hidden on both sides.`,
    mend: 'Rings: make the gap shorter or close the ring. Or more for End beyond the last fret, or for Width at fret 12.',
  }),
  ringCutterTooWide: ({ value, number }) => ({
    title: `The cutter is wider than ${ringName(number('ring')).toLowerCase()}`,
    sentence: `The channel is ${value('widthMm', 'thickness') ?? 'narrower'} wide, the cutter ${value('cutterMm', 'thickness') ?? 'wider'}.`,
    mend: 'Cutter for the channels: take a smaller one. Or make the ring wider under Rings.',
  }),
  ringPassesDoNotAdvance: ({ number }) => ({
    title: `Passes in ${ringName(number('ring')).toLowerCase()} do not advance`,
    sentence: 'The overlap is as wide as the cutter, so no pass takes new wood.',
    mend: 'Overlap of passes: make it less than the cutter.',
  }),
  channelTooDeep: ({ value }) => ({
    title: 'The channel is too deep for the top',
    sentence: `It goes ${value('depthMm', 'thickness') ?? 'deep'} into a plate of ${value('plateMm', 'thickness') ?? 'this thickness'}; too little is left beneath.`,
    mend: 'Inlay thickness: make it less, or let more stand proud. Or raise the Top thickness.',
  }),
  ringProudOfInlay: () => ({
    title: 'Nothing of the inlay is let in',
    sentence: 'What stands proud is as much as the inlay is thick, so there is no channel.',
    mend: 'Inlay stands proud by: make it less than the Inlay thickness.',
  }),
  boardCoversHole: ({ value }) => ({
    title: 'The board covers part of the hole',
    sentence: `Its end stands ${value('overHoleMm', 'bodyLength') ?? 'some way'} inside the edge of the hole.`,
    mend: 'Frets, or End beyond the last fret: make it less. Or move the Centre of the hole toward the tail.',
  }),
  soundholeCutterTooWide: ({ value }) => ({
    title: 'The cutter is too wide for the hole',
    sentence: `The hole has a radius of ${value('radiusMm', 'bodyLength') ?? 'less'}, the cutter is ${value('cutterMm', 'thickness') ?? 'wider'} across.`,
    mend: 'Cutter for the hole: take a smaller one.',
  }),
}
