import type { Change } from './commission.ts'
import { isPlainObject } from './path.ts'
import type { StageKey } from './patterns/stages.ts'
import type { Stages } from './stageLinks.ts'
import type { OwnStage } from './stageSchema.ts'

/** The stage of this kind that was left out last, so that it comes back with its id, its facts and what was its own; null where none was. */
export function formerStage(
  changes: readonly Change[],
  stages: Stages,
  key: StageKey,
): { readonly id: string; readonly own: OwnStage | undefined } | null {
  const left = changes.findLast(({ path, value, previous }) => {
    const [doc, field, id] = path
    if (path.length !== 3 || doc !== 'doc' || field !== 'stages' || id === undefined) return false
    return value === undefined && stages[id] === undefined && isPlainObject(previous) && previous['key'] === key
  })
  const id = left?.path[2]
  if (left === undefined || id === undefined || !isPlainObject(left.previous)) return null
  const own = left.previous['own']
  return { id, own: isPlainObject(own) ? own : undefined }
}
