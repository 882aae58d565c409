import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type AirCode = Extract<FindingCode, 'noAirLeft' | 'noFreeHole' | 'heardUnlikely'>

export const AIR_FINDINGS: WritersFor<AirCode> = {
  noAirLeft: ({ value }) => ({
    title: 'There is no air in the box',
    sentence: `Inside it holds ${value('grossMm3', 'volume') ?? 'too little'}; blocks, linings and braces would take ${value('takenUpMm3', 'volume') ?? 'more'}.`,
    mend: 'Rim depth at the tail or at the neck: make it more.',
  }),
  noFreeHole: () => ({
    title: 'Nothing of the hole is open',
    sentence: 'The board lies over all of it, so the air in the box has no way out.',
    mend: 'Frets, or End beyond the last fret: make it less. Or move the Centre of the hole toward the tail.',
  }),
  heardUnlikely: ({ value }) => ({
    title: 'Is that the note of the air?',
    sentence: `Heard was ${value('heardHz', 'resonance') ?? 'a note'}, far outside the ${value('lowHz', 'resonance') ?? 'lower note'} to ${value('highHz', 'resonance') ?? 'higher one'} at which the air of a box like this is usually heard. A top or back sounds elsewhere.`,
    mend: 'Heard when tapped: sing or play across the hole and tap again. Cover the hole: a note that stays is not the air’s.',
  }),
}
