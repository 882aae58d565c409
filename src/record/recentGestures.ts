import type { Change, Fact } from './commission.ts'
import { entriesOf, isChange } from './log.ts'
import { fieldName } from './path.ts'
import type { GestureLabel } from './undo.ts'

export interface RecentGesture extends GestureLabel {
  /** True where it took another one back. */
  readonly undoes: boolean
  /** Stages it said something of: signed off, timed, to be done again, or taken back. */
  readonly stageIds: readonly string[]
}

/** The maker's last actions on the record, newest first, each with the places it touched; papers that left are no action on it. */
export function recentGestures(
  changes: readonly Change[],
  facts: readonly Fact[],
  most: number,
): readonly RecentGesture[] {
  const recent = new Map<string, { fields: Set<string>; stageIds: Set<string>; at: string; undoes: boolean }>()
  const stageOf = (id: string): string[] =>
    facts.flatMap((one) =>
      one.id !== id
        ? []
        : one.kind === 'withdrawal'
          ? stageOf(one.of)
          : 'stageId' in one && one.stageId !== null
            ? [one.stageId]
            : [],
    )
  for (const entry of entriesOf(changes, facts).toReversed()) {
    if (!isChange(entry) && entry.kind === 'printed') continue
    const known = recent.get(entry.gesture)
    if (known === undefined && recent.size === most) break
    const gesture = known ?? {
      fields: new Set<string>(),
      stageIds: new Set<string>(),
      at: entry.at,
      undoes: entry.undoes !== null || (!isChange(entry) && entry.kind === 'withdrawal'),
    }
    if (isChange(entry)) gesture.fields.add(fieldName(entry.path))
    else for (const stageId of stageOf(entry.id)) gesture.stageIds.add(stageId)
    recent.set(entry.gesture, gesture)
  }
  return [...recent].map(([gesture, { fields, stageIds, at, undoes }]) => ({
    gesture,
    fields: [...fields],
    stageIds: [...stageIds],
    at,
    undoes,
  }))
}
