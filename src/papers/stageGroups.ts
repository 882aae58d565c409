import type { NumberKey } from '../core/numbers.ts'

/** Numbers of a stage that are set together: those that stand once, or the columns of one list of rows. */
export interface NumberGroup {
  /** 'single', or the list the keys are columns of: rim, places, rosette.rings, blocks.tail.contour ... */
  readonly list: string
  readonly keys: readonly NumberKey[]
}

/** The numbers of a stage in the order the hand reaches them, neighbours of one list gathered. */
export function groupNumbers(keys: readonly NumberKey[]): readonly NumberGroup[] {
  const groups: { list: string; keys: NumberKey[] }[] = []
  for (const key of keys) {
    const list = listOf(key)
    const last = groups.at(-1)
    if (last?.list === list) last.keys.push(key)
    else groups.push({ list, keys: [key] })
  }
  return groups
}

function listOf(key: NumberKey): string {
  const at = key.indexOf('[]')
  return at < 0 ? 'single' : key.slice(0, at)
}
