import type { Change, Fact } from '../record/commission.ts'
import { type Bundle, type DocumentRecord, nextSeq } from '../record/document.ts'
import { checkRow } from '../record/door.ts'
import { isBeginning, valueOf } from '../record/log.ts'
import { pathsOverlap, valueAt, withValueAt } from '../record/path.ts'

interface Entries {
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
}

/**
 * Entries that wait, entered anew on top of a document another tab has written to: same values, next free places, the former values
 * and parents as they are found now. null where one of them has nowhere to go any more.
 */
export function rebase<Row extends DocumentRecord>(
  stored: Bundle<Row>,
  waiting: Entries,
): (Bundle<Row> & { readonly waiting: Entries }) | null {
  let row: unknown = stored.row
  const log = [...stored.changes]
  const changes: Change[] = []
  let seq = nextSeq(stored.row)
  for (const change of waiting.changes) {
    // Both tabs began the document: the one that is stored counts.
    if (isBeginning(change)) continue
    const before = valueAt(row, change.path)
    row = withValueAt(row, change.path, valueOf(change))
    if (row === null) return null
    const { previous: _former, ...rest } = change
    const parent = log.findLast((one) => pathsOverlap(one.path, change.path))
    const previous = before.here ? { previous: before.value as NonNullable<Change['previous']> } : {}
    const again: Change = { ...rest, ...previous, seq, after: parent?.id ?? null }
    changes.push(again)
    log.push(again)
    seq += 1
  }
  const facts = waiting.facts.map((fact, i) => ({ ...fact, seq: seq + i }))
  const device = (waiting.changes[0] ?? waiting.facts[0])?.deviceId
  const seen = { ...stored.row.seen, ...(device === undefined ? {} : { [device]: seq + facts.length - 1 }) }
  const checked = checkRow<Row>({ ...(row as Row), seen })
  if (!checked.ok) return null
  return { row: checked.value, changes: log, facts: [...stored.facts, ...facts], waiting: { changes, facts } }
}
