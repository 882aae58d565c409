import type { Change, Fact } from './commission.ts'
import { byPlace, type DocumentRecord, seenIn } from './document.ts'
import { type Found, withValueAt } from './path.ts'

/** The value a change set: not here where it took the key away. */
export const valueOf = (change: Change): Found =>
  Object.hasOwn(change, 'value') ? { here: true, value: change.value } : { here: false }

/** The value a change found: not here where the key was new. */
export const previousOf = (change: Change): Found =>
  Object.hasOwn(change, 'previous') ? { here: true, value: change.previous } : { here: false }

/** True for the change by which a document came to be, or began anew without a past that could be taken back. */
export const isBeginning = (change: Change): boolean => change.path.length === 0 && !Object.hasOwn(change, 'previous')

/**
 * The document as its log tells it, after every change in turn; null where the log does not begin with a whole document, or sets
 * something that is not there. Nothing is checked against the schema. Facts only count for what has been seen.
 */
export function replayLog(changes: readonly Change[], facts: readonly Fact[] = []): unknown {
  let row: unknown = null
  for (const { row: next } of replayStates(changes)) row = next
  if (row === null) return null
  return { ...(row as DocumentRecord), seen: seenIn([...changes, ...facts]) }
}

/** Every state the document has been in, oldest first, each with the change that led to it; ends early where the log cannot be followed. */
export function* replayStates(
  changes: readonly Change[],
): Generator<{ readonly row: unknown; readonly change: Change }> {
  let row: unknown = null
  for (const change of changes.toSorted(byPlace)) {
    row = change.path.length === 0 || row !== null ? withValueAt(row, change.path, valueOf(change)) : null
    yield { row, change }
    if (row === null) return
  }
}

/** The log's entries, changes and facts together, in their order. Both are in order already. */
export function entriesOf(changes: readonly Change[], facts: readonly Fact[]): readonly (Change | Fact)[] {
  const entries: (Change | Fact)[] = []
  let next = 0
  for (const change of changes) {
    for (let fact = facts[next]; fact !== undefined && byPlace(fact, change) < 0; fact = facts[next]) {
      entries.push(fact)
      next += 1
    }
    entries.push(change)
  }
  return [...entries, ...facts.slice(next)]
}

export const isChange = (entry: Change | Fact): entry is Change => 'path' in entry
