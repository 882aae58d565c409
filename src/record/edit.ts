import { type Draft, enablePatches, produceWithPatches } from 'immer'
import type { Change } from './commission.ts'
import { type DocumentRecord, nextSeq } from './document.ts'
import { checkRow } from './door.ts'
import { type Found, type Path, pathsOverlap, sameJson, samePath, valueAt, withValueAt } from './path.ts'
import type { DoorProblem } from './problem.ts'
import { accept, type Result, refuse } from './result.ts'

enablePatches()

/** What is known about an edit besides the edit: who, when, which action of the maker's. */
export interface EditMeta {
  readonly deviceId: string
  /** ISO moment: a label. */
  readonly at: string
  readonly gesture: string
  readonly newId: () => string
}

/** A named change: mends the draft of a document in place. Takes keys away with `delete`, never assigns undefined. */
export type Recipe<Row extends DocumentRecord> = (draft: Draft<Row>) => void

export interface Edited<Row extends DocumentRecord> {
  readonly row: Row
  readonly changes: readonly Change[]
}

/**
 * THE way a document is edited: runs the recipe, checks the structure of what came out, and gives the new row with one change for each
 * value that moved (none where nothing did). `log` is the document's changes so far, in order. The given row is left as it was.
 */
export function editDocument<Row extends DocumentRecord>(
  row: Row,
  log: readonly Change[],
  recipe: Recipe<Row>,
  meta: EditMeta,
): Result<Edited<Row>, DoorProblem> {
  const [edited, patches] = produceWithPatches(row, (draft) => {
    recipe(draft)
  })
  const paths: Path[] = []
  for (const patch of patches) {
    const path = wholeValuePath(row, edited, patch.path.map(String))
    if (!paths.some((known) => samePath(known, path))) paths.push(path)
  }
  const moved = paths.filter((path) => {
    const [before, now] = [valueAt(row, path), valueAt(edited, path)]
    return before.here !== now.here || (before.here && now.here && !sameJson(before.value, now.value))
  })
  return appendChanges(
    row,
    log,
    moved.map((path) => ({ path, next: valueAt(edited, path) })),
    meta,
    null,
  )
}

/** Puts a whole document in the place of the one that is there, as one change. */
export function replaceDocument<Row extends DocumentRecord>(
  row: Row,
  log: readonly Change[],
  next: Row,
  meta: EditMeta,
) {
  return appendChanges(row, log, [{ path: [], next: { here: true, value: { ...next, seen: row.seen } } }], meta, null)
}

export interface Setting {
  readonly path: Path
  readonly next: Found
}

/** Applies settings in turn and writes them down as changes, then checks the structure of the result. */
export function appendChanges<Row extends DocumentRecord>(
  row: Row,
  log: readonly Change[],
  settings: readonly Setting[],
  meta: EditMeta,
  undoes: string | null,
): Result<Edited<Row>, DoorProblem> {
  if (settings.length === 0) return accept({ row, changes: [] })
  let now: unknown = row
  let seq = nextSeq(row)
  const changes: Change[] = []
  for (const { path, next } of settings) {
    const before = valueAt(now, path)
    now = withValueAt(now, path, next)
    if (now === null) return refuse({ code: 'wrongField', field: path.join('.'), detail: { kind: 'form' } })
    changes.push({
      id: meta.newId(),
      docId: row.id,
      deviceId: meta.deviceId,
      seq,
      at: meta.at,
      gesture: meta.gesture,
      path: [...path],
      ...(next.here ? { value: next.value as NonNullable<Change['value']> } : {}),
      ...(before.here ? { previous: before.value as NonNullable<Change['previous']> } : {}),
      after: lastSetting(log, changes, path),
      undoes,
    })
    seq += 1
  }
  const seen = { ...row.seen, [meta.deviceId]: seq - 1 }
  const checked = checkRow<Row>({ ...(now as Row), seen })
  return checked.ok ? accept({ row: checked.value, changes }) : checked
}

/** The latest change that touched this path: the parent of the next one. */
function lastSetting(log: readonly Change[], fresh: readonly Change[], path: Path): string | null {
  for (const list of [fresh, log])
    for (let i = list.length - 1; i >= 0; i -= 1) {
      const change = list[i]
      if (change !== undefined && pathsOverlap(change.path, path)) return change.id
    }
  return null
}

/** Values that make sense only whole are written down whole: any list, and the model a commission was started from. */
function wholeValuePath(before: unknown, after: unknown, path: Path): Path {
  if (path[0] === 'doc' && path[1] === 'modelAsTaken') return path.slice(0, 2)
  for (let length = 0; length < path.length; length += 1) {
    const head = path.slice(0, length)
    for (const root of [before, after]) {
      const found = valueAt(root, head)
      if (found.here && Array.isArray(found.value)) return head
    }
  }
  return path
}
