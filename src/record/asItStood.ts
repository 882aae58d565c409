import { readingsInUse, type ReadingFact } from './bench/measured.ts'
import { type Change, type CommissionDoc, commissionDoc, type Fact } from './commission.ts'
import { byPlace } from './document.ts'
import { replayStates } from './log.ts'
import { isPlainObject } from './path.ts'

/** An instrument as it stood at some moment: its document, and the readings in use by then. */
export interface AsItStood {
  readonly doc: CommissionDoc
  readonly readings: readonly ReadingFact[]
}

/** A document that was told by the log and is whole, by the object it is: one state is checked once, however often it is asked for. */
const checked = new WeakMap<object, boolean>()

/**
 * The document as it stood when each of these entries was written, by the entry's id: the log is followed once for all of them. null where it
 * cannot be followed so far, or where what it tells is no whole document.
 */
export function docsAt(
  changes: readonly Change[],
  entries: readonly (Change | Fact)[],
): ReadonlyMap<string, CommissionDoc | null> {
  const asked = entries.toSorted(byPlace)
  const docs = new Map<string, CommissionDoc | null>()
  let next = 0
  let told: unknown = null
  const tellUpTo = (change: Change | null): void => {
    const isBefore = (one: Change | Fact) => change === null || byPlace(one, change) < 0
    for (let one = asked[next]; one !== undefined && isBefore(one); one = asked[next]) {
      docs.set(one.id, wholeDoc(told))
      next += 1
    }
  }
  for (const { row, change } of replayStates(changes)) {
    tellUpTo(change)
    told = row
  }
  tellUpTo(null)
  return docs
}

/** The instrument as it stood when a stage was signed off, or anything else was noted; null where its log does not tell. */
export function docAtSigning(changes: readonly Change[], facts: readonly Fact[], fact: Fact): AsItStood | null {
  const doc = docsAt(changes, [fact]).get(fact.id) ?? null
  return doc === null ? null : { doc, readings: readingsAt(facts, fact) }
}

/** The readings that were in use when a fact was written: what was withdrawn or turned off later still stood. */
export const readingsAt = (facts: readonly Fact[], fact: Fact): readonly ReadingFact[] =>
  readingsInUse(facts.filter((one) => byPlace(one, fact) < 0))

function wholeDoc(row: unknown): CommissionDoc | null {
  const doc = isPlainObject(row) ? row['doc'] : null
  if (!isPlainObject(doc)) return null
  const isWhole = checked.get(doc) ?? commissionDoc.safeParse(doc).success
  checked.set(doc, isWhole)
  return isWhole ? (doc as CommissionDoc) : null
}
