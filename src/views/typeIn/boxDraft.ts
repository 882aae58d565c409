import type { Box } from '../../record/bench/readingOf.ts'

/** Under what name the text of a box is kept until it is stored. */
export const boxDraft = (stageId: string, { number, row, side }: Box): string =>
  `typeIn.${stageId}.${number}.${row}.${side}`

export const gaugeDraft = (stageId: string): string => `typeIn.${stageId}.gauge`
