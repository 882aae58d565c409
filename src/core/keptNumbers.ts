import { NUMBER_KEYS, type NumberKey } from './catalogue.ts'
import type { Figure } from './figure.ts'
import type { Numbers } from './numbers.ts'

/** Numbers as they were once, by their place: 'rim[3].depthMm', rows counted from 0. In the units of the numbers. */
export type KeptNumbers = Readonly<Record<string, Figure>>

/** The name of one value of a number: its key with the row in it. */
export const keptName = (key: NumberKey, row: number): string => key.replace('[]', `[${row}]`)

const KNOWN: ReadonlySet<string> = new Set(NUMBER_KEYS)

/** The number and the row such a name stands for; null for a number there is none of by now. */
export function readKeptName(name: string): { readonly key: NumberKey; readonly row: number } | null {
  const row = /\[(\d+)\]/u.exec(name)
  const key = row === null ? name : name.replace(row[0], '[]')
  return KNOWN.has(key) ? { key: key as NumberKey, row: Number(row?.[1] ?? 0) } : null
}

/** Numbers with those that were kept in their places. One whose row is no longer there, or that no longer exists, changes nothing. */
export function withKept(numbers: Numbers, kept: KeptNumbers): Numbers {
  let next: unknown = numbers
  for (const [name, value] of Object.entries(kept))
    if (readKeptName(name) !== null) next = withValue(next, name.replaceAll(/\[(\d+)\]/gu, '.$1').split('.'), value)
  return next as Numbers
}

function withValue(here: unknown, [step = '', ...rest]: readonly string[], value: Figure): unknown {
  if (typeof here !== 'object' || here === null || !Object.hasOwn(here, step)) return here
  const before = (here as Record<string, unknown>)[step]
  const after = rest.length === 0 ? value : withValue(before, rest, value)
  if (Object.is(before, after)) return here
  return Array.isArray(here) ? here.with(Number(step), after) : { ...here, [step]: after }
}
