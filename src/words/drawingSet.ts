import type { DrawingName } from '../drawing/drawing.ts'
import { DRAWING_WORDS } from './drawings.ts'

/** The shop drawings, one or a few to a page. */
export const DRAWING_SET_WORDS = {
  sheet: 'Shop drawings',
  /** Which of the set a page shows. */
  places: (first: number, last: number, of: number) => `${first === last ? first : `${first} to ${last}`} of ${of}`,
  numbered: (place: number, name: string) => `${place}  ${name}`,
  nameOf: (name: DrawingName): string => DRAWING_WORDS[name].name,
  /** Of a side that differs from the other. */
  ofSide: { treble: 'treble side', bass: 'bass side' },
  scale: (ratio: string) => `scale ${ratio}`,
  scalesBeside: 'scales at the drawings',
  toFit: 'drawn to fit, not to scale',
} as const
export type DrawingSetWords = typeof DRAWING_SET_WORDS
