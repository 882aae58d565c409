import { canBeShown, decimalText, stepsInward } from './rounding.ts'

/** Board feet to be bought, to a tenth, always rounded up: what is bought has to be enough. Nothing is 0.0; what is not finite, or under nothing, comes back as 0.0 too. */
export const formatBoardFeet = (boardFeet: number): string =>
  decimalText(canBeShown(boardFeet) && boardFeet > 0 ? stepsInward(boardFeet, 0.1, 'up') / 10 : 0, 1)
