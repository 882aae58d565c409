import type { Change, CommissionDoc } from './commission.ts'
import { replayStates } from './log.ts'
import { isPlainObject, sameJson, valueAt } from './path.ts'
import { CODE_LENGTH, type OnPaper, onPaperOf, revisionCode, SIGNS } from './revisionCode.ts'

/** A code as typed from paper in its one form: capitals, o as 0, i and l as 1, without spaces and hyphens. null: no such code. */
export function parseRevisionCode(typed: string): string | null {
  const code = typed.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1')
  return code.length === CODE_LENGTH && [...code].every((sign) => SIGNS.includes(sign)) ? code : null
}

/** One value that differs: dotted path inside the document; a key left out was, or is, not there. */
export interface Difference {
  readonly field: string
  readonly before?: unknown
  readonly now?: unknown
}

export type SinceRevision =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'unchanged' }
  /** `stoodAt`: ISO moment of the change that led to the printed state, the latest if there were several. */
  | { readonly kind: 'changed'; readonly stoodAt: string; readonly differences: readonly Difference[] }

/** What has changed since a sheet with this code was printed, found by replaying the log. */
export function changesSinceRevision(typed: string, doc: CommissionDoc, changes: readonly Change[]): SinceRevision {
  const code = parseRevisionCode(typed)
  if (code === null) return { kind: 'unknown' }
  if (revisionCode(doc) === code) return { kind: 'unchanged' }
  let found: { doc: OnPaper; stoodAt: string } | null = null
  let lastSeen: OnPaper | null = null
  for (const { row, change } of replayStates(changes)) {
    const then = onPaper(row)
    if (then === null) continue
    if (lastSeen !== null && samePaper(then, lastSeen)) continue
    lastSeen = then
    if (revisionCode(then) === code) found = { doc: then, stoodAt: change.at }
  }
  if (found === null) return { kind: 'unknown' }
  return { kind: 'changed', stoodAt: found.stoodAt, differences: listDifferences(onPaperOf(found.doc), onPaperOf(doc)) }
}

const samePaper = (a: OnPaper, b: OnPaper): boolean =>
  a.plan === b.plan && a.tolerances === b.tolerances && a.stages === b.stages

function onPaper(row: unknown): OnPaper | null {
  const doc = valueAt(row, ['doc'])
  if (!doc.here || !isPlainObject(doc.value)) return null
  const { plan, tolerances, stages } = doc.value
  return [plan, tolerances, stages].every(isPlainObject) ? ({ plan, tolerances, stages } as unknown as OnPaper) : null
}

/** The leaves that differ between two pieces of JSON; lists, and entries only one side has, are named whole. */
export function listDifferences(before: unknown, now: unknown, field = ''): Difference[] {
  if (sameJson(before, now)) return []
  if (!isPlainObject(before) || !isPlainObject(now)) return [{ field, before, now }]
  return [...new Set([...Object.keys(before), ...Object.keys(now)])].flatMap((key): Difference[] => {
    const name = field === '' ? key : `${field}.${key}`
    if (!Object.hasOwn(before, key)) return [{ field: name, now: now[key] }]
    if (!Object.hasOwn(now, key)) return [{ field: name, before: before[key] }]
    return listDifferences(before[key], now[key], name)
  })
}
