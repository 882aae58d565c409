import { SCHEMA_VERSION } from '../commission.ts'
import { isPlainObject } from '../path.ts'
import { type DoorProblem, wrongField } from '../problem.ts'
import { accept, type Result, refuse } from '../result.ts'
import { everyBody } from './everyBody.ts'
import { fullSize } from './fullSize.ts'
import { ownOrders } from './ownOrders.ts'
import { theBox } from './theBox.ts'
import { theNeck } from './theNeck.ts'

type Json = Record<string, unknown>

/**
 * One named step from version `to - 1` to version `to`. It gets plain JSON of the older shape and gives the newer; it need not check,
 * since the schema does that afterwards. The log travels too, so that undo reaches back across a change of shape.
 */
export interface Migration {
  readonly to: number
  readonly name: string
  /** A whole document row, of either kind. */
  readonly row: (row: Json) => Json
  /** One change, with the older row it belongs to; the rows that the change of a whole document carries are migrated apart. */
  readonly change: (change: Json, row: unknown) => Json
  readonly fact: (fact: Json) => Json
}

/** Every step there has been, in order, without gaps, the last one reaching SCHEMA_VERSION. Version 1 is the first. */
export const MIGRATIONS: readonly Migration[] = [everyBody, theNeck, theBox, fullSize, ownOrders]

/** A document with its log and its facts, as stored or as read from a file: nothing is known about it yet. */
export interface RawBundle {
  readonly row: unknown
  readonly changes: readonly unknown[]
  readonly facts: readonly unknown[]
}

/** The bundle at `target`, and whether anything had to be done. A newer one is refused and left as it is. */
export function migrateBundle(
  bundle: RawBundle,
  migrations: readonly Migration[] = MIGRATIONS,
  target: number = SCHEMA_VERSION,
): Result<{ readonly bundle: RawBundle; readonly migrated: boolean }, DoorProblem> {
  const { row } = bundle
  if (!isPlainObject(row)) return refuse({ code: 'unreadable' })
  const found = row['schemaVersion']
  if (typeof found !== 'number' || !Number.isInteger(found))
    return refuse(wrongField('schemaVersion', found === undefined ? { kind: 'missing' } : { kind: 'form' }))
  if (found > target)
    return refuse({ code: 'tooNew', field: 'schemaVersion', detail: { kind: 'version', found, known: target } })
  const oldest = (migrations[0]?.to ?? target + 1) - 1
  if (found < oldest) return refuse(wrongField('schemaVersion', { kind: 'form' }))
  try {
    const steps = migrations.filter((step) => step.to > found)
    return accept({ bundle: steps.reduce(migrateOnce, bundle), migrated: steps.length > 0 })
  } catch {
    return refuse({ code: 'unreadable' })
  }
}

function migrateOnce(bundle: RawBundle, step: Migration): RawBundle {
  const migrateRow = (row: unknown): unknown =>
    isPlainObject(row) ? { ...step.row(row), schemaVersion: step.to } : row
  const migrateChange = (change: unknown): unknown => {
    if (!isPlainObject(change)) return change
    const next = step.change(change, bundle.row)
    if (!Array.isArray(next['path']) || next['path'].length > 0) return next
    for (const side of ['value', 'previous']) if (Object.hasOwn(next, side)) next[side] = migrateRow(next[side])
    return next
  }
  return {
    row: migrateRow(bundle.row),
    changes: bundle.changes.map(migrateChange),
    facts: bundle.facts.map((fact) => (isPlainObject(fact) ? step.fact(fact) : fact)),
  }
}
