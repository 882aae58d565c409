import { useCallback, useState } from 'react'
import { useSheetBench } from './sheetBench.ts'

/** What sheets of the instrument in hand keep while another of its sheets is looked at: no part of the record. */
let held: { readonly id: string; readonly values: Map<string, unknown> } | null = null

function valuesOf(id: string): Map<string, unknown> {
  if (held === null || held.id !== id) held = { id, values: new Map() }
  return held.values
}

/** A state of a sheet that is there again when the sheet is, until another instrument is opened. */
export function useKeptWhileOpen<Value>(name: string, start: Value): [Value, (next: Value) => void] {
  const { id } = useSheetBench()
  const [value, set] = useState(() => (valuesOf(id).has(name) ? (valuesOf(id).get(name) as Value) : start))
  const keep = useCallback(
    (next: Value) => {
      valuesOf(id).set(name, next)
      set(next)
    },
    [id, name],
  )
  return [value, keep]
}
