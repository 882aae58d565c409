import type { NumberKey } from '../../core/catalogue.ts'
import { LIST_WORDS, type NumberListName } from '../../words/names/lists.ts'
import { PART_WORDS } from '../../words/parts.ts'

export interface ToleranceGroup {
  readonly heading: string
  readonly keys: readonly NumberKey[]
}

const PARTS: Readonly<Partial<Record<string, string>>> = PART_WORDS
const LISTS: Readonly<Partial<Record<string, string>>> = Object.fromEntries(
  Object.entries(LIST_WORDS).map(([list, { title }]) => [list, title]),
)

/** What a number is one of: the list it stands in, else its part. */
function headingOf(key: NumberKey): string {
  const end = key.lastIndexOf('[]')
  const list = end < 0 ? null : (key.slice(0, end) as NumberListName)
  const part = key.split('.')[0] ?? ''
  return (list === null ? undefined : LISTS[list]) ?? PARTS[part] ?? part
}

/** Numbers under what they are of, in the order they come. */
export function toleranceGroups(keys: readonly NumberKey[]): ToleranceGroup[] {
  const groups = new Map<string, NumberKey[]>()
  for (const key of keys) {
    const heading = headingOf(key)
    groups.set(heading, [...(groups.get(heading) ?? []), key])
  }
  return [...groups].map(([heading, of]) => ({ heading, keys: of }))
}
