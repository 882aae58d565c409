import type * as z from 'zod/mini'
import { BRACE_END_RANGES, BRACE_RANGES, PLANK_RANGES } from './boxFields.ts'
import { FIELDS, PIECE_RANGES, READING_RANGES, RING_RANGES, SIDE_BRACE_RANGE } from './fields.ts'
import type { FieldRange } from './fieldRange.ts'
import { BOLT_RANGE, MARKER_RANGE, STRING_RANGES } from './neckFields.ts'
import { fieldName } from './path.ts'

/** Why something was not taken in, as data; the sentence is made where it is shown. One field is named, the first that is wrong. */
export interface DoorProblem {
  readonly code: DoorProblemCode
  /** Dotted path of the field. */
  readonly field?: string
  readonly detail?: DoorDetail
}

/**
 * tooNew      written by a later version of the program; left as it is
 * unreadable  not JSON, cut short, or nested beyond reason
 * notOurs     readable, but no commission of this program
 * wrongField  one field holds what it cannot
 * tooLarge    bigger than any commission can be
 */
export type DoorProblemCode = 'tooNew' | 'unreadable' | 'notOurs' | 'wrongField' | 'tooLarge'

export type DoorDetail =
  | { readonly kind: 'range'; readonly range: FieldRange }
  | { readonly kind: 'choices'; readonly choices: readonly string[] }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unknownKey' }
  | { readonly kind: 'repeated' }
  | { readonly kind: 'otherDocument' }
  | { readonly kind: 'tooLong'; readonly most: number }
  | { readonly kind: 'version'; readonly found: number; readonly known: number }
  | { readonly kind: 'size'; readonly mostMegabytes: number }
  | { readonly kind: 'form' }

/** The field ranges hold for, as data, for any dotted name that ends in a field of the plan; null for all others. */
export function rangeOf(field: string): FieldRange | null {
  const at = field.lastIndexOf('plan.')
  if (at < 0) return null
  const inPlan = field.slice(at + 'plan.'.length)
  const own = (FIELDS as Ranges)[inPlan]
  if (own !== undefined) return own
  const last = inPlan.slice(inPlan.lastIndexOf('.') + 1)
  if (inPlan.startsWith('outline.pieces.')) return (PIECE_RANGES as Ranges)[last] ?? null
  if (/^outline\.halfWidths\.\w*[rR]ows\./.test(inPlan))
    return last === '0' ? READING_RANGES.fromTailMm : READING_RANGES.halfWidthMm
  if (inPlan.startsWith('sideBraces.atMm.')) return SIDE_BRACE_RANGE
  if (inPlan.startsWith('strings.set.')) return (STRING_RANGES as Ranges)[last] ?? null
  if (inPlan.startsWith('strings.otherNotes.')) return STRING_RANGES.note
  if (inPlan.startsWith('board.markersAt.')) return MARKER_RANGE
  if (inPlan.startsWith('neck.boltsAtMm.')) return BOLT_RANGE
  if (inPlan.startsWith('rosette.rings.')) return (RING_RANGES as Ranges)[last] ?? null
  if (/^bracing\.braces\.[^.]+\.(?:from|to)\./.test(inPlan)) return (BRACE_END_RANGES as Ranges)[last] ?? null
  if (inPlan.startsWith('bracing.braces.')) return (BRACE_RANGES as Ranges)[last] ?? null
  if (inPlan.startsWith('cutting.planks.')) return (PLANK_RANGES as Ranges)[last] ?? null
  return null
}
type Ranges = Readonly<Record<string, FieldRange>>

const LONGEST_NAME = 120
/** A name that is safe to show: no longer than a line, however hostile the key. */
const shown = (name: string): string => (name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME)}…` : name)

export function wrongField(field: string, detail: DoorDetail): DoorProblem {
  return { code: 'wrongField', field: shown(field), detail }
}

/** What a schema says of a value that is not there. */
export const MISSING = 'missing'

/** The first thing a schema holds against a value. */
export function problemOfIssues(issues: readonly z.core.$ZodIssue[], prefix = ''): DoorProblem {
  const issue = issues[0]
  if (issue === undefined) return { code: 'unreadable' }
  const here = fieldName(issue.path.map(String))
  const field = [prefix, here].filter((part) => part !== '').join('.')
  switch (issue.code) {
    case 'unrecognized_keys':
      return wrongField([field, issue.keys[0] ?? ''].filter((part) => part !== '').join('.'), { kind: 'unknownKey' })
    case 'invalid_key':
      return wrongField(field, { kind: 'unknownKey' })
    case 'invalid_value':
      return wrongField(field, { kind: 'choices', choices: issue.values.map(String) })
    case 'invalid_union':
      if (issue.discriminator !== undefined && 'options' in issue && Array.isArray(issue.options))
        return wrongField(field, { kind: 'choices', choices: issue.options.map(String) })
      break
    case 'too_big':
      if (issue.origin === 'string' || issue.origin === 'array')
        return wrongField(field, { kind: 'tooLong', most: Number(issue.maximum) })
      break
  }
  const range = rangeOf(field)
  if (range !== null && range.type !== 'whole' && range.type !== 'choice')
    return wrongField(field, { kind: 'range', range })
  if (issue.code === 'invalid_type' && issue.message === MISSING) return wrongField(field, { kind: 'missing' })
  return wrongField(field, { kind: 'form' })
}
