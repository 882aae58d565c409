import type { FieldRange } from '../record/fieldRange.ts'
import type { DoorDetail, DoorProblem } from '../record/problem.ts'

/** How a sentence about a refused file names fields and ranges; each has a plain form of its own. */
export interface DoorWords {
  readonly fieldName?: (field: string) => string
  readonly range?: (range: FieldRange) => string
}

const NOTHING_CHANGED = 'Nothing stored was changed.'

/** One sentence, and what it means for the maker's data, for anything the door refused. */
export function doorSentence(problem: DoorProblem, words: DoorWords = {}): string {
  return `${reason(problem, words)} ${NOTHING_CHANGED}`
}

function reason({ code, field, detail }: DoorProblem, words: DoorWords): string {
  switch (code) {
    case 'tooNew':
      return 'This was written by a later version of this program and is left as it is: load the newer program and open it there.'
    case 'unreadable':
      return 'This cannot be read: it is damaged, or was cut short.'
    case 'notOurs':
      return 'This holds no commission of this program.'
    case 'tooLarge':
      return detail?.kind === 'size'
        ? `This is larger than ${detail.mostMegabytes} MB, which no commission is.`
        : 'This is larger than any commission can be.'
    case 'wrongField':
      return field === undefined
        ? 'One of its fields holds something it cannot.'
        : `The field “${words.fieldName?.(field) ?? field}” ${fault(detail, words)}`
  }
}

/** Longer lists of choices are not read out. */
const MOST_NAMED = 8

function fault(detail: DoorDetail | undefined, words: DoorWords): string {
  switch (detail?.kind) {
    case 'range':
      return `must be ${words.range?.(detail.range) ?? rangeText(detail.range)}.`
    case 'choices':
      return detail.choices.length > MOST_NAMED
        ? 'is none of the choices this program knows.'
        : `must be one of ${detail.choices.join(', ')}.`
    case 'missing':
      return 'is missing.'
    case 'unknownKey':
      return 'is not one this program knows.'
    case 'repeated':
      return 'comes twice.'
    case 'otherDocument':
      return 'belongs to another commission.'
    case 'tooLong':
      return `is too long: at most ${detail.most}.`
    default:
      return 'holds something it cannot.'
  }
}

function rangeText(range: FieldRange): string {
  switch (range.type) {
    case 'length':
      return `a number from ${range.minMm} to ${range.maxMm} (mm)${range.flat ? ', or “flat”' : ''}${range.open ? ', or left open' : ''}`
    case 'angle':
      return `a number from ${range.minDeg} to ${range.maxDeg} (degrees)`
    case 'count':
      return `a whole number from ${range.min} to ${range.max}${range.open ? ', or left open' : ''}`
    default:
      return 'one of the choices it has'
  }
}
