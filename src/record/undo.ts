import type { Change, Fact } from './commission.ts'
import { type DocumentRecord, nextSeq } from './document.ts'
import { appendChanges, type EditMeta, type Setting } from './edit.ts'
import { entriesOf, isBeginning, isChange, previousOf, valueOf } from './log.ts'
import { type Found, fieldName, sameJson, samePath } from './path.ts'
import type { DoorProblem } from './problem.ts'
import { accept, type Result } from './result.ts'

/** One action of the maker's that can be taken back, and what it touched. */
export interface GestureLabel {
  readonly gesture: string
  /** Dotted names of what it set, in order, none twice; `facts` for a stage signed off or withdrawn. */
  readonly fields: readonly string[]
  readonly at: string
}

interface Gesture {
  readonly id: string
  readonly undoes: string | null
  readonly changes: Change[]
  readonly facts: Fact[]
}

/**
 * What the next undo and the next redo would take back, read from the log alone, so both outlive a reload. Actions on the document as a
 * whole (archiving, deleting) have their own undo and are passed over, as are papers that left, and actions that came to nothing.
 */
export function undoable(
  changes: readonly Change[],
  facts: readonly Fact[],
): { readonly undo: GestureLabel | null; readonly redo: GestureLabel | null } {
  const done: Gesture[] = []
  const undone: Gesture[] = []
  for (const gesture of gesturesOf(changes, facts)) {
    if (gesture.changes[0] !== undefined && isBeginning(gesture.changes[0])) {
      done.length = 0
      undone.length = 0
      continue
    }
    if (isHousekeeping(gesture)) continue
    if (gesture.undoes === null) {
      done.push(gesture)
      undone.length = 0
    } else if (takeFrom(undone, gesture.undoes)) done.push(gesture)
    else if (takeFrom(done, gesture.undoes)) undone.push(gesture)
  }
  return { undo: lastThatMoves(done), redo: lastThatMoves(undone) }
}

/** Takes one gesture back by appending its inverse: former values set again, facts withdrawn. Nothing where the gesture is unknown. */
export function takeBack<Row extends DocumentRecord>(
  row: Row,
  changes: readonly Change[],
  facts: readonly Fact[],
  gesture: string,
  meta: EditMeta,
): Result<{ readonly row: Row; readonly changes: readonly Change[]; readonly facts: readonly Fact[] }, DoorProblem> {
  const mine = changes.filter((change) => change.gesture === gesture)
  const settings = netEffect(mine)
    .map(({ path, before }): Setting => ({ path, next: before }))
    .reverse()
  const appended = appendChanges(row, changes, settings, meta, gesture)
  if (!appended.ok) return appended
  const withdrawals = facts
    .filter((fact) => fact.gesture === gesture)
    .map((fact, i) => withdrawalOf(fact.id, nextSeq(appended.value.row) + i, row.id, meta, gesture))
  const last = withdrawals.at(-1)
  const seen = { ...appended.value.row.seen, ...(last === undefined ? {} : { [meta.deviceId]: last.seq }) }
  return accept({ row: { ...appended.value.row, seen }, changes: appended.value.changes, facts: withdrawals })
}

function withdrawalOf(of: string, seq: number, docId: string, meta: EditMeta, undoes: string): Fact {
  const { deviceId, at, gesture } = meta
  return { kind: 'withdrawal', id: meta.newId(), docId, deviceId, seq, at, gesture, undoes, of }
}

function gesturesOf(changes: readonly Change[], facts: readonly Fact[]): Iterable<Gesture> {
  const gestures = new Map<string, Gesture>()
  for (const entry of entriesOf(changes, facts)) {
    const known = gestures.get(entry.gesture)
    const gesture = known ?? { id: entry.gesture, undoes: entry.undoes, changes: [], facts: [] }
    if (known === undefined) gestures.set(entry.gesture, gesture)
    if (isChange(entry)) gesture.changes.push(entry)
    else gesture.facts.push(entry)
  }
  return gestures.values()
}

function isHousekeeping({ changes, facts }: Gesture): boolean {
  return (
    facts.every(({ kind }) => kind === 'printed') &&
    changes.every(({ path }) => path[0] === 'deletedAt' || path[1] === 'archivedOn')
  )
}

/** Each path a gesture set, with what stood there before it began and after it ended; in the order it first touched them. */
function netEffect(changes: readonly Change[]): { path: readonly string[]; before: Found; after: Found }[] {
  const effect: { path: readonly string[]; before: Found; after: Found }[] = []
  for (const change of changes) {
    const same = effect.find(({ path }) => samePath(path, change.path))
    if (same !== undefined) same.after = valueOf(change)
    else effect.push({ path: change.path, before: previousOf(change), after: valueOf(change) })
  }
  return effect
}

function moves(gesture: Gesture): boolean {
  if (gesture.facts.length > 0) return true
  return netEffect(gesture.changes).some(
    ({ before, after }) =>
      before.here !== after.here || (before.here && after.here && !sameJson(before.value, after.value)),
  )
}

function lastThatMoves(stack: readonly Gesture[]): GestureLabel | null {
  const gesture = stack.findLast(moves)
  if (gesture === undefined) return null
  const fields = new Set(gesture.changes.map((change) => fieldName(change.path)))
  if (gesture.facts.length > 0) fields.add('facts')
  return { gesture: gesture.id, fields: [...fields], at: (gesture.changes[0] ?? gesture.facts[0])?.at ?? '' }
}

function takeFrom(stack: Gesture[], id: string): boolean {
  const at = stack.findLastIndex((gesture) => gesture.id === id)
  if (at < 0) return false
  stack.splice(at, 1)
  return true
}
