import type { CommissionRecord, Fact } from '../commission.ts'
import type { EditMeta } from '../edit.ts'
import { headOfFact, standingFacts } from '../facts.ts'

/** The clock of a stage, started or stopped; `sharedBy`: how many instruments are worked on in one go. */
export const pressClock = (
  row: CommissionRecord,
  press: { readonly stageId: string; readonly act: 'start' | 'stop'; readonly sharedBy: number },
  meta: EditMeta,
): Fact => ({ kind: 'clock', ...headOfFact(row, meta), ...press })

/** Hours said afterwards: all of them, however many instruments shared them. */
export const sayHours = (
  row: CommissionRecord,
  said: { readonly stageId: string; readonly hours: number; readonly on: string; readonly sharedBy: number },
  meta: EditMeta,
): Fact => ({ kind: 'hours', ...headOfFact(row, meta), ...said })

/** One stretch of work on a stage, as much of it as this instrument's share. */
export interface WorkEntry {
  readonly stageId: string
  /** The fact it is told by: the start of a clock, or what was said. */
  readonly factId: string
  readonly how: 'clock' | 'said'
  /** ISO day. */
  readonly on: string
  readonly hours: number
  readonly sharedBy: number
}

/** The work on one stage. */
export interface StageWork {
  readonly entries: readonly WorkEntry[]
  /** This instrument's share of all finished stretches. */
  readonly hours: number
  /** When the clock that still runs was started (ISO), and by how many it is shared; null: none runs. */
  readonly running: { readonly since: string; readonly sharedBy: number } | null
}

const HOUR_MS = 3_600_000
const NO_WORK: StageWork = { entries: [], hours: 0, running: null }

/**
 * The work on every stage that has any, by stage. A start while the clock runs changes nothing; a stop without a start tells nothing; a clock set
 * back in between counts as no time. Signing a stage off stops its clock.
 */
export function workOf(facts: readonly Fact[]): ReadonlyMap<string, StageWork> {
  const work = new Map<string, StageWork>()
  const started = new Map<string, Extract<Fact, { kind: 'clock' }>>()
  const add = (entry: WorkEntry): void => {
    const known = work.get(entry.stageId) ?? NO_WORK
    work.set(entry.stageId, { ...known, entries: [...known.entries, entry], hours: known.hours + entry.hours })
  }
  const stop = (stageId: string, at: string): void => {
    const start = started.get(stageId)
    if (start === undefined) return
    started.delete(stageId)
    const { sharedBy } = start
    const hours = Math.max(Date.parse(at) - Date.parse(start.at), 0) / HOUR_MS / sharedBy
    add({ stageId, factId: start.id, how: 'clock', on: start.at.slice(0, 10), hours, sharedBy })
  }
  for (const fact of standingFacts(facts)) {
    if (fact.kind === 'clock' && fact.act === 'start' && !started.has(fact.stageId)) started.set(fact.stageId, fact)
    if (fact.kind === 'clock' && fact.act === 'stop') stop(fact.stageId, fact.at)
    if (fact.kind === 'stageDone') stop(fact.stageId, fact.at)
    if (fact.kind === 'hours') {
      const { stageId, id, on, sharedBy } = fact
      add({ stageId, factId: id, how: 'said', on, hours: fact.hours / sharedBy, sharedBy })
    }
  }
  for (const [stageId, { at, sharedBy }] of started)
    work.set(stageId, { ...(work.get(stageId) ?? NO_WORK), running: { since: at, sharedBy } })
  return work
}
