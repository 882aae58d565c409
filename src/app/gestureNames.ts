import type { Change } from '../record/commission.ts'
import { entryChange } from '../record/entryChange.ts'
import { previousOf, valueOf } from '../record/log.ts'
import { fieldName } from '../record/path.ts'
import { STRING_WORDS } from '../words/fields/neck.ts'
import { REVISION_WORDS } from '../words/instrument.ts'
import { STRINGS_WORDS } from '../words/neck/sheets.ts'
import { NUMBER_NAMES } from '../words/numberNames.ts'
import { placeName } from '../words/places.ts'

const STRINGS = 'plan.strings.set'

/** What an action of the maker's touched, said shortly: at most two places, and how many more. `others` are stages it signed off. */
export function gestureName(
  { gesture, fields }: { readonly gesture: string; readonly fields: readonly string[] },
  changes: readonly Change[],
  others: readonly string[] = [],
): string {
  const said = (field: string): string => (field === STRINGS ? stringsName(gesture, changes) : placeHere(field))
  const names = [...new Set([...fields.map(said), ...others])]
  const rest = names.length - 2
  return names.slice(0, 2).join(', ') + (rest > 0 ? ` +${rest}` : '')
}

/** A place by its name, a tolerance by the name of its number. */
export function placeHere(field: string): string {
  const number = field.startsWith('tolerances.') ? field.slice('tolerances.'.length) : ''
  const name = (NUMBER_NAMES as Readonly<Record<string, string>>)[number]
  return name === undefined ? placeName(field) : `${placeName('tolerances')}: ${name}`
}

/** Strings are replaced whole: which one changed, and what of it, or how many there were and are. */
function stringsName(gesture: string, changes: readonly Change[]): string {
  const mine = changes.filter((change) => change.gesture === gesture && fieldName(change.path) === STRINGS)
  const [first, last] = [mine[0], mine.at(-1)]
  const name = placeName(STRINGS)
  if (first === undefined || last === undefined) return name
  const [before, after] = [previousOf(first), valueOf(last)]
  if (!before.here || !after.here) return name
  const change = entryChange(before.value, after.value)
  if (change === null) return name
  if (change.kind === 'count') return `${name}: ${REVISION_WORDS.wasNow(String(change.before), String(change.after))}`
  const words = (STRING_WORDS as Readonly<Record<string, { readonly name: string }>>)[change.key]
  return words === undefined ? name : `${STRINGS_WORDS.string(change.at + 1)}: ${words.name}`
}
