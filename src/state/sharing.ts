import { asWriter } from '../device/writerLock.ts'
import { readingsInUse } from '../record/bench/measured.ts'
import type { CommissionRecord, Fact } from '../record/commission.ts'
import { type Bundle, nextSeq, seenIn } from '../record/document.ts'
import { readFact } from '../record/door.ts'
import type { EditMeta } from '../record/edit.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { type DocumentWrite, readDocument, type ReadProblem, saveDocument } from '../storage/documents.ts'
import type { CommissionNeeds, CommissionStore } from './commissionStore.ts'
import { changeStored, metaOf, type StoredEditProblem, type StoredNeeds } from './editStored.ts'

/** One of the instruments something is written to, as it stands. */
export interface Sharer<Computed> {
  readonly row: CommissionRecord
  readonly facts: readonly Fact[]
  /** Its own numbers, with what was measured on it. */
  readonly computed: () => Computed
}

/** Which instrument kept it from being written, and why. */
export interface ShareProblem {
  readonly id: string
  readonly problem: StoredEditProblem
}

export interface Sharing<Computed> {
  /** An instrument as it stands, wherever it is held. */
  readonly read: (id: string) => Promise<Result<Bundle, ReadProblem>>
  /**
   * Writes facts to several instruments: to all of them, or to none. An hour shared by three that is written to two would lose its third, so one
   * instrument that cannot be written to keeps the others from it.
   */
  readonly shareFacts: (
    ids: readonly string[],
    make: (one: Sharer<Computed>, meta: EditMeta) => readonly Fact[],
  ) => Promise<Result<null, ShareProblem>>
}

export interface SharingNeeds<Computed>
  extends StoredNeeds,
    Pick<CommissionNeeds<Computed>, 'build' | 'prepareReadings'> {
  readonly commission: CommissionStore<Computed>
}

interface Made {
  readonly bundle: Bundle
  readonly facts: readonly Fact[]
}

export function createSharing<Computed>(needs: SharingNeeds<Computed>): Sharing<Computed> {
  const { database, locks, commission, newId } = needs

  async function read(id: string): Promise<Result<Bundle, ReadProblem>> {
    const { record, changes, facts } = commission.store.getState()
    if (commission.writes(id) && record !== null) return accept({ row: record, changes, facts })
    return readDocument(database, 'commission', id)
  }

  /** Takes the pen of each in turn, and does the work while it holds them all. */
  async function withPens(
    ids: readonly string[],
    work: () => Promise<Result<null, ShareProblem>>,
  ): Promise<Result<null, ShareProblem>> {
    const [id, ...rest] = ids
    if (id === undefined) return work()
    const held = await asWriter(locks, id, () => withPens(rest, work))
    return held === null ? refuse({ id, problem: { code: 'openInAnotherTab' } }) : held.done
  }

  /** The facts one instrument gets, checked, each in the place after the one before. */
  async function makeFor(
    id: string,
    make: Parameters<Sharing<Computed>['shareFacts']>[1],
    gesture: string,
  ): Promise<Result<Made, ShareProblem>> {
    const stored = await read(id)
    if (!stored.ok) return refuse({ id, problem: stored.problem })
    const { row, facts } = stored.value
    const readings = readingsInUse(facts)
    if (readings.length > 0) await needs.prepareReadings()
    const computed = () => needs.build(row.doc.plan, readings).computed
    const checked: Fact[] = []
    for (const [i, made] of make({ row, facts, computed }, metaOf(needs, gesture)).entries()) {
      const fact = readFact({ ...made, seq: nextSeq(row) + i })
      if (!fact.ok) return refuse({ id, problem: fact.problem })
      checked.push(fact.value)
    }
    return accept({ bundle: stored.value, facts: checked })
  }

  async function shareFacts(
    ids: readonly string[],
    make: Parameters<Sharing<Computed>['shareFacts']>[1],
  ): Promise<Result<null, ShareProblem>> {
    const gesture = newId()
    const here = ids.filter((id) => commission.writes(id))
    // In one order everywhere, so that two tabs never wait for each other.
    const others = ids.filter((id) => !here.includes(id)).toSorted()
    return withPens(others, async () => {
      const made = new Map<string, Made>()
      for (const id of [...here, ...others]) {
        const one = await makeFor(id, make, gesture)
        if (!one.ok) return one
        made.set(id, one.value)
      }
      const written = await saveDocument(database, ...others.flatMap((id) => writeOf(made.get(id)) ?? []))
      if (!written.ok) return refuse({ id: others[0] ?? '', problem: written.problem })
      if (others.length > 0) needs.onSaved?.()
      for (const id of here) {
        const facts = made.get(id)?.facts ?? []
        // It may have been closed while the others were written.
        const answer = commission.writes(id)
          ? commission.addFacts(() => facts)
          : await changeStored(needs, 'commission', id, gesture, ({ row }) => accept(added(row, facts)))
        if (!answer.ok) return refuse({ id, problem: answer.problem })
      }
      return accept(null)
    })
  }

  return { read, shareFacts }
}

function added(row: CommissionRecord, made: readonly Fact[]): Bundle {
  const facts = made.map((fact, i) => ({ ...fact, seq: nextSeq(row) + i }))
  return { row: { ...row, seen: seenIn(facts, row.seen) }, changes: [], facts }
}

function writeOf(made: Made | undefined): DocumentWrite | null {
  if (made === undefined || made.facts.length === 0) return null
  const { row, facts } = added(made.bundle.row, made.facts)
  return { row, changes: [], facts, allFacts: [...made.bundle.facts, ...facts] }
}
