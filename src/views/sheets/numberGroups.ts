import { NUMBER_KEYS, type NumberKey } from '../../core/catalogue.ts'
import { NUMBER_WORDS } from '../../words/numbers.ts'
import type { NumberListName } from '../../words/names/lists.ts'
import { PART_WORDS } from '../../words/parts.ts'

export type Part = keyof typeof PART_WORDS

/** Numbers that stand once, and the groups of those that stand in rows: all keys under one `[]`. */
export interface PartNumbers {
  readonly part: Part
  readonly single: readonly NumberKey[]
  readonly rows: readonly { readonly of: NumberListName; readonly keys: readonly NumberKey[] }[]
}

const PARTS = Object.keys(PART_WORDS) as Part[]

/** Every number by part, in the order of the catalogue; with a search, only those whose name or meaning has it. */
export function groupNumbers(search: string): PartNumbers[] {
  const wanted = search.trim().toLowerCase()
  const fits = (key: NumberKey): boolean => {
    const { name, what } = NUMBER_WORDS[key]
    return wanted === '' || `${name} ${what} ${key}`.toLowerCase().includes(wanted)
  }
  return PARTS.flatMap((part): PartNumbers[] => {
    const keys = NUMBER_KEYS.filter((key) => isUnder(key, part) && fits(key))
    const inRows = new Map<NumberListName, NumberKey[]>()
    for (const key of keys) {
      const end = key.lastIndexOf('[]')
      if (end < 0) continue
      const of = key.slice(0, end) as NumberListName
      inRows.set(of, [...(inRows.get(of) ?? []), key])
    }
    const single = keys.filter((key) => !key.includes('[]'))
    const rows = [...inRows].map(([of, keysOf]) => ({ of, keys: keysOf }))
    return single.length + rows.length === 0 ? [] : [{ part, single, rows }]
  })
}

const isUnder = (key: NumberKey, part: Part): boolean => key.startsWith(`${part}.`) || key.startsWith(`${part}[].`)
