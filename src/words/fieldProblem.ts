import type { CountProblem } from '../format/entryProblem.ts'

/**
 * One sentence for a text a field could not take: it names the field, says what is wrong, and what may stand there.
 * `range` as formatAllowedRange writes it; `example` is an entry that would be taken.
 */
export function fieldProblem(label: string, problem: CountProblem, range: string, example: string): string {
  const may = `It may be ${range}`
  switch (problem.code) {
    case 'empty':
      return `${label} is empty: what stood before still counts. ${may}.`
    case 'tooLong':
      return `${label} is longer than ${problem.limit} characters. ${may}, such as ${example}.`
    case 'unreadable':
      return `${label}: “${shortened(problem.at)}” makes no sense here. Write it like ${example}. ${may}.`
    case 'unfinished':
      return `${label} stops half way: a number is missing at the end. ${may}.`
    case 'ambiguous':
      return `${label} can mean two things. Which is it?`
    case 'divideByZero':
      return `${label} divides by nothing. ${may}.`
    case 'wrongKind':
      return `${label} does not come out as a single measure. ${may}, such as ${example}.`
    case 'tooLarge':
      return `${label} is far too large. ${may}.`
    case 'notWhole':
      return `${label} is counted in whole pieces. ${may}.`
  }
}

/** The same for a value that was understood but may not stand there. */
export function outsideRange(label: string, understood: string, side: 'below' | 'above', range: string): string {
  return `${label} of ${understood} is ${side === 'below' ? 'less' : 'more'} than can be built here: it may be ${range}.`
}

/** A text that is longer than there is room for. */
export function tooLongText(label: string, most: number): string {
  return `${label} takes ${most} characters at the most: shorten it and it is kept.`
}

/** A day that is not one. */
export function noSuchDay(label: string): string {
  return `${label} is no day of the calendar: write it like 2027-03-12, or leave it empty.`
}

export const FIELD_WORDS = {
  allowed: 'allowed',
  open: 'open: solve it',
  given: 'give a number',
  isOpen: 'open, to be solved',
  flat: 'flat',
  round: 'round',
  asked: 'Which is meant',
} as const

/** Notes in scientific pitch notation. */
export const NOTE_WORDS = {
  problem: (label: string, range: string): string =>
    `${label} is no note: write it like E2, F#3 or Bb2, from ${range.replace(' – ', ' to ')}.`,
} as const

const shortened = (text: string): string => (text.length > 24 ? `${text.slice(0, 24)}…` : text)
