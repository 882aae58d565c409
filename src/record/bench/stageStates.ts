import type { Fact } from '../commission.ts'
import { standingFacts } from '../facts.ts'
import type { StageInHand } from '../stageInHand.ts'
import { workOf } from './work.ts'

/** One thing that was said of a stage, in the order it was said. */
export type StageEvent =
  | { readonly kind: 'signed'; readonly at: string; readonly factId: string }
  | { readonly kind: 'redo'; readonly at: string; readonly factId: string; readonly reason: string }

/** Where a stage stands. */
export interface StageState {
  readonly word: 'toDo' | 'running' | 'done' | 'again'
  /** ISO moment: since when its clock runs, when it was signed off, or when it was said that it is to be done again. */
  readonly since: string | null
  /** How many instruments share the clock that runs. */
  readonly sharedBy: number
  /** What was signed off, and what was to be done again, with its reason. */
  readonly history: readonly StageEvent[]
  /** All hours of this instrument's. */
  readonly spentH: number
  /** Those since it was last said that it is to be done again; all where that was never said. */
  readonly freshH: number
}

export const NOTHING_DONE: StageState = {
  word: 'toDo',
  since: null,
  sharedBy: 1,
  history: [],
  spentH: 0,
  freshH: 0,
}

/** Where every stage stands that anything was said of, by id. */
export function stageStates(facts: readonly Fact[]): ReadonlyMap<string, StageState> {
  const events = new Map<string, StageEvent[]>()
  const places = new Map<string, number>()
  for (const [at, fact] of standingFacts(facts).entries()) {
    places.set(fact.id, at)
    if (fact.kind !== 'stageDone' && fact.kind !== 'redo') continue
    const known = events.get(fact.stageId) ?? []
    const head = { at: fact.at, factId: fact.id }
    known.push(fact.kind === 'redo' ? { kind: 'redo', ...head, reason: fact.reason } : { kind: 'signed', ...head })
    events.set(fact.stageId, known)
  }
  const work = workOf(facts)
  return new Map(
    [...new Set([...events.keys(), ...work.keys()])].map((id): [string, StageState] => {
      const history = events.get(id) ?? []
      const last = history.at(-1)
      const done = work.get(id)
      const running = done?.running ?? null
      const redo = places.get(history.findLast(({ kind }) => kind === 'redo')?.factId ?? '') ?? -1
      const fresh = (done?.entries ?? []).filter(({ factId }) => (places.get(factId) ?? 0) > redo)
      const said = last === undefined ? 'toDo' : last.kind === 'signed' ? 'done' : 'again'
      return [
        id,
        {
          word: running === null ? said : 'running',
          since: running?.since ?? last?.at ?? null,
          sharedBy: running?.sharedBy ?? 1,
          history,
          spentH: done?.hours ?? 0,
          freshH: fresh.reduce((sum, { hours }) => sum + hours, 0),
        },
      ]
    }),
  )
}

/** True where a stage is signed off, whether or not a clock runs on it again. */
export const isSigned = ({ history }: StageState): boolean => history.at(-1)?.kind === 'signed'

/** Stages on which anything stands: a signature, hours, a clock, a reading. By id. */
export function begunStages(facts: readonly Fact[]): ReadonlySet<string> {
  return new Set(standingFacts(facts).flatMap((fact) => ('stageId' in fact ? (fact.stageId ?? []) : [])))
}

export interface HoursOf {
  readonly spentH: number
  /** Likely hours of what is not signed off, less those already spent on it. */
  readonly leftH: number
}

/** Hours spent and likely left, by a part each stage is counted to, in the order of the parts; parts without stages are left out. */
export function hoursByPart<Part>(
  stages: readonly Pick<StageInHand, 'id' | 'handsH' | 'times'>[],
  states: ReadonlyMap<string, StageState>,
  partOf: (id: string) => Part,
): readonly (HoursOf & { readonly part: Part })[] {
  const sums = new Map<Part, HoursOf>()
  for (const { id, handsH, times } of stages) {
    const state = states.get(id) ?? NOTHING_DONE
    const part = partOf(id)
    const sum = sums.get(part) ?? { spentH: 0, leftH: 0 }
    const leftH = isSigned(state) ? 0 : Math.max(handsH.likely * times - state.freshH, 0)
    sums.set(part, { spentH: sum.spentH + state.spentH, leftH: sum.leftH + leftH })
  }
  return [...sums].map(([part, sum]) => ({ part, ...sum }))
}

export const allHours = (parts: readonly HoursOf[]): HoursOf => ({
  spentH: parts.reduce((sum, { spentH }) => sum + spentH, 0),
  leftH: parts.reduce((sum, { leftH }) => sum + leftH, 0),
})
