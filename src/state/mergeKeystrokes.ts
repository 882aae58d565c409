import type { Change } from '../record/commission.ts'
import { samePath } from '../record/path.ts'

/**
 * One change for several strokes on the same value that have not been written yet: the first one's place and former value, the last
 * one's value. null where the new change has to stand on its own. `log` ends with the last of `waiting` if nothing came between.
 */
export function mergeKeystrokes(
  waiting: readonly Change[],
  fresh: readonly Change[],
  log: readonly Change[],
): Change | null {
  const [next] = fresh
  const last = waiting.at(-1)
  if (next === undefined || last === undefined || fresh.length > 1 || log.at(-1) !== last) return null
  if (last.undoes !== null || next.undoes !== null || last.gesture !== next.gesture) return null
  if (next.seq !== last.seq + 1 || last.path.length === 0 || !samePath(last.path, next.path)) return null
  const { value: _former, ...rest } = last
  return { ...rest, at: next.at, ...(Object.hasOwn(next, 'value') ? { value: next.value } : {}) }
}
