import type { BACK_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** The back, until it goes on the rim. */
export const BACK_LINES: Readonly<Record<keyof typeof BACK_TITLES, StageLines>> = {
  joinBack: {
    lines: [
      'Bookmatch, shoot, glue with the centre inlay if one is ordered.',
      'Mark tail end and show face before it leaves the board.',
      'Oily woods: scrape or wipe the glue edge just before gluing and let it flash off.',
    ],
    whole: [
      'Bookmatch, shoot, glue with the centre inlay if one is ordered.',
      'Thickness, saw oversize, and mark tail end and show face.',
      'Oily woods: scrape or wipe the glue edge just before gluing and let it flash off.',
    ],
  },
  thicknessBack: {
    lines: [
      'Level the joint first; then take both faces down together, the show face last.',
      'Measure on a grid and write the readings on the waste.',
      'Saw outside the line with the overhang all round, and mark tail end and centre line again.',
    ],
  },
  stripBack: {
    lines: [
      'Grain across the joint. Round its edges before it is glued.',
      'Cut it through for each brace and for the label: the pieces and their places stand below.',
      'Keep it clear of both blocks; press it in the dish, so that it takes the dome.',
    ],
  },
  archBackBraces: {
    lines: [
      'Grain upright, split along it; number each and mark its gluing edge.',
      'The back’s dish is another one than the top’s: mark both sets, so that they are not mixed.',
      'Plane each to its arch and prove it with chalk from end to end.',
    ],
  },
  braceBack: {
    lines: [
      'Lay out both ends by the table and square across the centre line.',
      'Each goes through the strip without lifting it, and down on the plate all along.',
      'Glue in the dish, from the middle outward, and clean along the sides of each.',
    ],
    whole: [
      'Lay the centre strip, cut through for each brace and for the label.',
      'Arch the braces to the back’s dish, glue them in it, and carve when set.',
      'Keep the strip clear of both blocks.',
    ],
  },
  carveBack: {
    lines: [
      'Round or peak them all alike, and leave full height over the middle.',
      'Bring the ends to what is let into the lining; the side’s height there is in the table.',
      'A straightedge across the outside shows by its gaps at the rim lines whether the dome has held.',
      'Nobody reaches them again: finish them with fine paper.',
    ],
  },
}
