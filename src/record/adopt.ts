import type { NumberKey } from '../core/numbers.ts'
import type { Change, CommissionFile, CommissionRecord, Fact, ShopDoc } from './commission.ts'
import { type Bundle, nextSeq, seenIn } from './document.ts'
import { bundleOfFile, checkRow } from './door.ts'
import { type EditMeta, editDocument, type Recipe } from './edit.ts'
import { standingFacts, withdraw } from './facts.ts'
import { replayLog } from './log.ts'
import { sameJson } from './path.ts'
import type { DoorProblem } from './problem.ts'
import { accept, type Result } from './result.ts'

/** What settles the tolerances a commission was made with: those of the shop here, and the ones a shop starts from. */
export interface TolerancesHere {
  readonly shop: ShopDoc['tolerances']
  readonly starting: (key: NumberKey) => number | null
}

/** A checked file as a document of this device: its log made to tell what it holds, and its tolerances those it was made with. */
export function adoptFile(file: CommissionFile, here: TolerancesHere, meta: EditMeta): Result<Bundle, DoorProblem> {
  return settleTolerances(withFollowingLog(bundleOfFile(file), meta), file, here, meta)
}

/** The same under ids of its own, beside one that is here already, and never part of the demo. Ids of stages and rings stay: they mean nothing elsewhere. */
export function adoptFileAsNew(
  file: CommissionFile,
  number: string,
  here: TolerancesHere,
  meta: EditMeta,
): Result<Bundle, DoorProblem> {
  const settled = settleTolerances(withFollowingLog(withNewIds(bundleOfFile(file), meta.newId), meta), file, here, meta)
  if (!settled.ok) return settled
  const { row, changes, facts } = settled.value
  const renamed = editDocument(row, changes, ({ doc }) => void Object.assign(doc, { number, demo: false }), meta)
  if (!renamed.ok) return renamed
  return accept({ row: renamed.value.row, changes: [...changes, ...renamed.value.changes], facts })
}

/** The row a file brings in the place of one that is here. */
export function rowOfFile(
  file: CommissionFile,
  here: TolerancesHere,
  meta: EditMeta,
): Result<CommissionRecord, DoorProblem> {
  const { row } = bundleOfFile(file)
  const edited = editDocument(row, [], toleranceRecipe(file, here), meta)
  return edited.ok ? accept(edited.value.row) : edited
}

/** Facts to add so that those of the file stand, and no others: some come in, some are withdrawn, some withdrawals are. */
export function factsToMatch(
  row: CommissionRecord,
  facts: readonly Fact[],
  file: CommissionFile,
  meta: EditMeta,
): Fact[] {
  // Papers that left another device did not leave this one.
  const wanted = standingFacts(bundleOfFile(file).facts).filter(
    (one) => one.kind !== 'withdrawal' && one.kind !== 'printed',
  )
  const standing = standingFacts(facts)
  const standingIds = new Set(standing.map((one) => one.id))
  const wantedIds = new Set(wanted.map((one) => one.id))
  const known = new Set(facts.map((one) => one.id))
  const added: Fact[] = []
  const place = () => ({ seq: nextSeq(row) + added.length })
  for (const one of standing) {
    // What left this device on paper stays told here, whatever the file says.
    if (one.kind === 'printed') continue
    const isUnwanted = one.kind === 'withdrawal' ? wantedIds.has(one.of) : !wantedIds.has(one.id)
    if (isUnwanted) added.push({ ...withdraw(row, one.id, meta), ...place() })
  }
  for (const one of wanted) {
    if (known.has(one.id) || standingIds.has(one.id)) continue
    const { deviceId, gesture } = meta
    added.push({ ...one, docId: row.id, deviceId, gesture, undoes: null, ...place() })
  }
  return added
}

/** A log that does not tell what the document holds (none in a file written by hand, say) gets one more change that does. */
function withFollowingLog(bundle: Bundle, meta: EditMeta): Bundle {
  const { row, changes, facts } = bundle
  const told = replayLog(changes, facts)
  if (sameJson(told, row)) return bundle
  const past = told === null ? null : checkRow<CommissionRecord>(told)
  const change: Change = {
    id: meta.newId(),
    docId: row.id,
    deviceId: meta.deviceId,
    seq: nextSeq(row),
    at: meta.at,
    gesture: meta.gesture,
    path: [],
    value: { ...row, seen: {} },
    ...(past?.ok && past.value.id === row.id
      ? { previous: past.value as unknown as NonNullable<Change['previous']> }
      : {}),
    after: changes.at(-1)?.id ?? null,
    undoes: null,
  }
  return { row: { ...row, seen: seenIn([change], row.seen) }, changes: [...changes, change], facts }
}

function settleTolerances(
  bundle: Bundle,
  file: CommissionFile,
  here: TolerancesHere,
  meta: EditMeta,
): Result<Bundle, DoorProblem> {
  const edited = editDocument(bundle.row, bundle.changes, toleranceRecipe(file, here), meta)
  if (!edited.ok) return edited
  return accept({ row: edited.value.row, changes: [...bundle.changes, ...edited.value.changes], facts: bundle.facts })
}

/** Writes into the commission each tolerance it took from the shop it came from, where the shop here would give another. */
function toleranceRecipe(file: CommissionFile, here: TolerancesHere): Recipe<CommissionRecord> {
  const there = file.shop.tolerances
  return ({ doc }) => {
    for (const key of new Set([...Object.keys(there), ...Object.keys(here.shop)]) as Set<NumberKey>) {
      if (doc.tolerances[key] !== undefined) continue
      const was = there[key] === undefined ? here.starting(key) : there[key]
      const wouldBe = here.shop[key] === undefined ? here.starting(key) : here.shop[key]
      if (was !== wouldBe) doc.tolerances[key] = was
    }
  }
}

function withNewIds(bundle: Bundle, newId: () => string): Bundle {
  const docId = newId()
  const ids = new Map<string, string>()
  for (const { id } of [...bundle.changes, ...bundle.facts]) ids.set(id, newId())
  const renewed = (id: string): string => ids.get(id) ?? id
  const isRow = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null
  const changes = bundle.changes.map((one): Change => {
    const moved = { ...one, id: renewed(one.id), docId, after: one.after === null ? null : renewed(one.after) }
    if (one.path.length > 0) return moved
    for (const side of ['value', 'previous'] as const) {
      const row = moved[side]
      if (isRow(row)) moved[side] = { ...row, id: docId } as NonNullable<Change['value']>
    }
    return moved
  })
  const facts = bundle.facts.map((one): Fact => {
    const moved = { ...one, id: renewed(one.id), docId }
    // Some speak of others.
    if (moved.kind === 'withdrawal' || moved.kind === 'readingUse') return { ...moved, of: renewed(moved.of) }
    if (moved.kind === 'reading' && moved.replaces !== null) return { ...moved, replaces: renewed(moved.replaces) }
    return moved
  })
  return { row: { ...bundle.row, id: docId }, changes, facts }
}
