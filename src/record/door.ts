import * as z from 'zod/mini'
import {
  COMMISSION_FILE,
  change,
  type CommissionFile,
  type CommissionRecord,
  commissionFile,
  documentHead,
  type Draft,
  draft,
  type Fact,
  fact,
  type Head,
  head,
  type ShopDoc,
} from './commission.ts'
import { type Bundle, byPlace, type DocumentRecord, documentRow, seenIn } from './document.ts'
import { guardShape } from './guard.ts'
import { MIGRATIONS, type Migration, migrateBundle, type RawBundle } from './migrations/migrate.ts'
import { isPlainObject } from './path.ts'
import { type DoorProblem, problemOfIssues, wrongField } from './problem.ts'
import { accept, type Result, refuse } from './result.ts'

/**
 * The one door: whatever was stored or opened is unknown until it has passed here. Migrates, then checks the structure; never throws,
 * never writes, and names ONE field when it refuses.
 */
export function readCommissionFile(
  input: unknown,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<CommissionFile, DoorProblem> {
  const guarded = guardShape(input)
  if (!guarded.ok) return guarded
  if (!isPlainObject(input) || input['format'] !== COMMISSION_FILE) return refuse({ code: 'notOurs' })
  const { format, savedAt, shop, changes, facts, ...flat } = input
  if (!Array.isArray(changes))
    return refuse(wrongField('changes', { kind: changes === undefined ? 'missing' : 'form' }))
  if (!Array.isArray(facts)) return refuse(wrongField('facts', { kind: facts === undefined ? 'missing' : 'form' }))
  const version = flat['schemaVersion']
  const whole = migrateBundle({ row: rowOfFlat(flat), changes, facts }, migrations)
  if (!whole.ok) return whole
  const shopMoved = migrateBundle(
    { row: { kind: 'shop', schemaVersion: version, doc: shop }, changes: [], facts: [] },
    migrations,
  )
  if (!shopMoved.ok) return shopMoved
  const { bundle } = whole.value
  const parsed = commissionFile.safeParse({
    format,
    savedAt,
    ...flatOfRow(bundle.row),
    shop: isPlainObject(shopMoved.value.bundle.row) ? shopMoved.value.bundle.row['doc'] : undefined,
    changes: bundle.changes,
    facts: bundle.facts,
  })
  if (!parsed.success) return refuse(problemOfIssues(parsed.error.issues))
  const file = parsed.data
  const odd = oddEntry(file.id, file.changes, file.facts)
  return odd === null ? accept(file) : refuse(odd)
}

/** The document, log and facts a checked file holds; `seen` is counted anew from them. */
export function bundleOfFile(file: CommissionFile): Bundle {
  const { format: _format, savedAt: _savedAt, shop: _shop, changes, facts, ...flat } = file
  const { id, schemaVersion, deletedAt, seen: _seen, ...doc } = flat
  const row: CommissionRecord = {
    id,
    kind: 'commission',
    schemaVersion,
    seen: seenIn([...changes, ...facts]),
    deletedAt,
    doc,
  }
  return { row, changes: changes.toSorted(byPlace), facts: facts.toSorted(byPlace) }
}

/** The file of a document; `savedAt` is an ISO moment, `shop` what it was computed with. */
export function fileOfBundle(bundle: Bundle, shop: ShopDoc, savedAt: string): CommissionFile {
  const { id, schemaVersion, seen, deletedAt, doc } = bundle.row
  const { changes, facts } = bundle
  return {
    format: COMMISSION_FILE,
    id,
    schemaVersion,
    seen,
    deletedAt,
    savedAt,
    ...doc,
    shop,
    changes: [...changes],
    facts: [...facts],
  }
}

/** A stored document with its log and facts. `migrated` says that what is stored is of an older shape. */
export function readBundle<Kind extends DocumentRecord['kind']>(
  kind: Kind,
  raw: RawBundle,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<
  { readonly bundle: Bundle<Extract<DocumentRecord, { kind: Kind }>>; readonly migrated: boolean },
  DoorProblem
> {
  for (const part of [raw.row, ...raw.changes, ...raw.facts]) {
    const guarded = guardShape(part)
    if (!guarded.ok) return guarded
  }
  if (!isPlainObject(raw.row) || raw.row['kind'] !== kind) return refuse({ code: 'notOurs' })
  const moved = migrateBundle(raw, migrations)
  if (!moved.ok) return moved
  const { bundle, migrated } = moved.value
  const row = parse(documentRow, bundle.row)
  if (!row.ok) return row
  const changes = parse(z.array(change), bundle.changes, 'changes')
  if (!changes.ok) return changes
  const facts = parse(z.array(fact), bundle.facts, 'facts')
  if (!facts.ok) return facts
  const odd = oddEntry(row.value.id, changes.value, facts.value)
  if (odd !== null) return refuse(odd)
  return accept({
    bundle: {
      row: row.value as Extract<DocumentRecord, { kind: Kind }>,
      changes: changes.value.toSorted(byPlace),
      facts: facts.value.toSorted(byPlace),
    },
    migrated,
  })
}

export const readHead = (input: unknown): Result<Head, DoorProblem> => parse(head, input)
/** One fact: its figures must be finite. */
export const readFact = (input: unknown): Result<Fact, DoorProblem> => parse(fact, input)
export const readDraft = (input: unknown): Result<Draft, DoorProblem> => parse(draft, input)

/** The structure of a document row of this version: what every edit's result has to pass. */
export function checkRow<Row extends DocumentRecord>(row: unknown): Result<Row, DoorProblem> {
  const parsed = parse(documentRow, row)
  return parsed.ok ? accept(row as Row) : parsed
}

function parse<Value>(schema: z.ZodMiniType<Value>, input: unknown, prefix = ''): Result<Value, DoorProblem> {
  const parsed = schema.safeParse(input)
  return parsed.success ? accept(parsed.data) : refuse(problemOfIssues(parsed.error.issues, prefix))
}

interface Entry {
  readonly id: string
  readonly docId: string
  readonly deviceId: string
  readonly seq: number
}

/** Entries must belong to the document they lie with, and no id and no place in the log may come twice. */
function oddEntry(docId: string, changes: readonly Entry[], facts: readonly Entry[]): DoorProblem | null {
  const ids = new Set<string>()
  const places = new Set<string>()
  for (const [name, entries] of [
    ['changes', changes],
    ['facts', facts],
  ] as const) {
    for (const [i, entry] of entries.entries()) {
      if (entry.docId !== docId) return wrongField(`${name}.${i}.docId`, { kind: 'otherDocument' })
      if (ids.has(entry.id)) return wrongField(`${name}.${i}.id`, { kind: 'repeated' })
      ids.add(entry.id)
      const place = `${entry.deviceId} ${entry.seq}`
      if (places.has(place)) return wrongField(`${name}.${i}.seq`, { kind: 'repeated' })
      places.add(place)
    }
  }
  return null
}

const HEAD_KEYS: ReadonlySet<string> = new Set(Object.keys(documentHead.shape))

function rowOfFlat(flat: Record<string, unknown>): Record<string, unknown> {
  const entries = Object.entries(flat)
  return {
    ...Object.fromEntries(entries.filter(([key]) => HEAD_KEYS.has(key))),
    kind: 'commission',
    doc: Object.fromEntries(entries.filter(([key]) => !HEAD_KEYS.has(key))),
  }
}

function flatOfRow(row: unknown): Record<string, unknown> {
  if (!isPlainObject(row)) return {}
  const { kind: _kind, doc, ...flat } = row
  return isPlainObject(doc) ? { ...flat, ...doc } : flat
}
