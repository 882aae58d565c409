import { FAMILY_WORDS } from './instrument.ts'

/** The label inside the body, and the page it is cut from. */
export const LABEL_WORDS = {
  sheet: 'Label',
  lead: (size: string) => `Two labels at true size, ${size}. Measure the frame first, then cut along the marks.`,
  size: (widthMm: string, heightMm: string) => `${widthMm} × ${heightMm}`,
  number: (number: string) => `No. ${number}`,
  families: FAMILY_WORDS,
  signed: 'Signed',
  trueSize: 'scale 1 : 1',
} as const
export type LabelWords = typeof LABEL_WORDS
