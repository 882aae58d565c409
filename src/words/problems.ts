import type { FieldRange } from '../record/fieldRange.ts'
import type { DoorProblem } from '../record/problem.ts'
import { doorSentence } from './doorProblem.ts'

/** Whatever kept something from being read, written or changed: the codes of record, storage and state in one shape. */
export type AnyProblem =
  | DoorProblem
  | { readonly code: Exclude<string, DoorProblem['code']>; readonly detail?: unknown }

const DOOR_CODES: readonly string[] = ['tooNew', 'unreadable', 'notOurs', 'wrongField', 'tooLarge']
const isDoorProblem = (problem: AnyProblem): problem is DoorProblem => DOOR_CODES.includes(problem.code)

/** How a sentence speaks of fields; the words for them all come only with what can name one. */
export interface Telling {
  readonly placeName?: (field: string) => string
  /** Writes an allowed range in the shop's units. */
  readonly range?: (range: FieldRange) => string
}

/** One sentence: what was not done, why, and what to do. */
export function problemSentence(problem: AnyProblem, { placeName, range }: Telling = {}): string {
  if (isDoorProblem(problem)) {
    const fieldName = (field: string): string => {
      const name = placeName?.(field) ?? field
      return name === field ? field : `${name} (${field})`
    }
    return doorSentence(problem, { fieldName, ...(range === undefined ? {} : { range }) })
  }
  switch (problem.code) {
    case 'missing':
      return 'There is no such instrument on this device.'
    case 'diskFull':
      return 'This device has no room left. The last edits are kept in memory: make room, or save a copy, before closing.'
    case 'closing':
      return 'Another tab has brought a newer version. Reload this tab to go on.'
    case 'changedElsewhere':
      return 'Another tab has written to this instrument in between. Try once more.'
    case 'gone':
      return 'This instrument is no longer on this device. Save a copy of what you see.'
    case 'openInAnotherTab':
    case 'readOnly':
      return 'This instrument is being written in another tab. Close it there to write here.'
    case 'notOpen':
      return 'The instrument is not open yet. Try again in a moment.'
    default: {
      const name = typeof problem.detail === 'string' ? problem.detail : problem.code
      return `The device refused (${name}). The last edits are kept in memory: save a copy before closing.`
    }
  }
}
