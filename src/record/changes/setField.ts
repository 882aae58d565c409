import type { Draft } from 'immer'
import type { DocumentRecord } from '../document.ts'
import type { Recipe } from '../edit.ts'
import { isPlainObject, type Path } from '../path.ts'

/**
 * Sets one value inside `doc`, named by its steps or, where no step holds a dot, by its dotted name: 'plan.rim.depthAtTailMm'.
 * Leads nowhere: changes nothing. Whether the value may stand there is the schema's to say.
 */
export function setField<Row extends DocumentRecord>(field: string | Path, value: unknown): Recipe<Row> {
  const path = typeof field === 'string' ? field.split('.') : field
  return (draft: Draft<Row>) => {
    let place: unknown = draft.doc
    for (const step of path.slice(0, -1)) {
      if (!isPlainObject(place) || !Object.hasOwn(place, step)) return
      place = place[step]
    }
    const last = path.at(-1)
    if (last === undefined || !isPlainObject(place)) return
    if (value === undefined) delete place[last]
    else place[last] = value
  }
}
