import { isPlainObject, sameJson } from './path.ts'

/** How a list that is replaced whole came to differ: in how many it holds, or in one value of one entry, counted from 0. */
export type EntryChange =
  | { readonly kind: 'count'; readonly before: number; readonly after: number }
  | { readonly kind: 'entry'; readonly at: number; readonly key: string }

/** What changed between two states of a list of plain objects; null where it is nothing, more than one value, or not such a list. */
export function entryChange(before: unknown, after: unknown): EntryChange | null {
  if (!Array.isArray(before) || !Array.isArray(after)) return null
  if (before.length !== after.length) return { kind: 'count', before: before.length, after: after.length }
  const found: EntryChange[] = []
  for (const [at, was] of before.entries()) {
    const is: unknown = after[at]
    if (!isPlainObject(was) || !isPlainObject(is)) return null
    for (const key of new Set([...Object.keys(was), ...Object.keys(is)]))
      if (!sameJson(was[key], is[key])) found.push({ kind: 'entry', at, key })
  }
  return found.length === 1 ? (found[0] ?? null) : null
}
