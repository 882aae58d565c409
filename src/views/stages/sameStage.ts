import { isSigned, NOTHING_DONE, type StageState, stageStates } from '../../record/bench/stageStates.ts'
import type { Bundle } from '../../record/document.ts'
import { inOrder } from '../../record/order.ts'
import type { StageEntry } from '../../record/stageSchema.ts'

/** The first stage of another instrument that is the same work and is not signed off; null where it has none. Work of the maker's own is the same where it is called the same. */
export function sameStage(
  { row, facts }: Pick<Bundle, 'row' | 'facts'>,
  wanted: Pick<StageEntry, 'key' | 'own'>,
): { readonly id: string; readonly state: StageState } | null {
  const states = stageStates(facts)
  const stateOf = (id: string): StageState => states.get(id) ?? NOTHING_DONE
  const found = inOrder(row.doc.stages).find(
    ([id, { key, own }]) =>
      key === wanted.key && (key !== 'ownWork' || own?.title === wanted.own?.title) && !isSigned(stateOf(id)),
  )
  return found === undefined ? null : { id: found[0], state: stateOf(found[0]) }
}
