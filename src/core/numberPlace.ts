import type { Figure } from './figure.ts'
import { ringsInOrder } from './instrument/rosette.ts'
import { type NumberKey, type Numbers, readNumbers } from './numbers.ts'
import type { Plan } from './plan.ts'

/** A plan with the numbers it gives. */
export interface Worked {
  readonly plan: Plan
  readonly numbers: Numbers
}

/** One value of a number, by what keeps its meaning when rows come and go. */
export interface NumberPlace {
  readonly key: NumberKey
  readonly row: number
  /** Round the rim: along the outer face from the tail, mm. */
  readonly alongMm: number | null
  /** The entry of a collection it belongs to: a ring, a brace. */
  readonly entry: string | null
}

/** What stands round the rim, and the dense rows in which a distance along that side is looked up. */
const ROUND_THE_RIM: Readonly<Record<string, 'rim' | 'trebleRim'>> = {
  rim: 'rim',
  places: 'rim',
  trebleRim: 'trebleRim',
  treblePlaces: 'trebleRim',
}

/** A distance this little beyond the last row is still on it. */
const BEYOND_MM = 0.5

/** The list a number is a column of; null where it stands once. */
export function listOf(key: NumberKey): string | null {
  const at = key.indexOf('[]')
  return at < 0 ? null : key.slice(0, at)
}

/** The place of one row of a number, as the instrument has it that these numbers are of. */
export function placeOf({ plan, numbers }: Worked, key: NumberKey, row: number): NumberPlace {
  const list = listOf(key)
  const along =
    list !== null && list in ROUND_THE_RIM ? readNumbers(numbers, `${list}[].alongOuterMm` as NumberKey) : []
  const alongMm = along[row]
  return {
    key,
    row,
    alongMm: typeof alongMm === 'number' ? alongMm : null,
    entry: entriesOf(plan, numbers, list)?.[row] ?? null,
  }
}

/**
 * What a number is at a place; null where the instrument has no such place. Round the rim between two rows the straight line between them is
 * taken: a place keeps its distance from the tail when the stations move.
 */
export function figureAt({ plan, numbers }: Worked, { key, row, alongMm, entry }: NumberPlace): Figure | null {
  const list = listOf(key)
  const dense = list === null ? undefined : ROUND_THE_RIM[list]
  if (alongMm !== null && list !== null && dense !== undefined) {
    const column = key.slice(list.length)
    return betweenRows(
      readNumbers(numbers, `${dense}[].alongOuterMm`) as number[],
      readNumbers(numbers, `${dense}${column}` as NumberKey),
      alongMm,
    )
  }
  const at = entry === null ? row : (entriesOf(plan, numbers, list)?.indexOf(entry) ?? row)
  return readNumbers(numbers, key)[at] ?? null
}

/** The row of today's list that stands for a place: round the rim the nearest one. */
export function rowAt({ plan, numbers }: Worked, { key, row, alongMm, entry }: NumberPlace): number {
  const list = listOf(key)
  if (list === null) return 0
  if (alongMm !== null && list in ROUND_THE_RIM) {
    const along = readNumbers(numbers, `${list}[].alongOuterMm` as NumberKey) as number[]
    const offMm = (at: number) => Math.abs((along[at] ?? Number.POSITIVE_INFINITY) - alongMm)
    return along.reduce((nearest, _, at) => (offMm(at) < offMm(nearest) ? at : nearest), 0)
  }
  const at = entry === null ? row : (entriesOf(plan, numbers, list)?.indexOf(entry) ?? row)
  return Math.max(at, 0)
}

function betweenRows(alongMm: readonly number[], values: readonly Figure[], atMm: number): Figure | null {
  const first = alongMm[0]
  const last = alongMm.at(-1)
  if (first === undefined || last === undefined) return null
  if (atMm < first - BEYOND_MM || atMm > last + BEYOND_MM) return null
  const after = Math.max(
    alongMm.findIndex((mm) => mm >= atMm),
    atMm > last ? alongMm.length - 1 : 0,
  )
  const [a, b] = [Math.max(after - 1, 0), after]
  const [low, high] = [values[a], values[b]]
  if (low === undefined || high === undefined) return null
  const stepMm = alongMm[b]! - alongMm[a]!
  const part = stepMm > 0 ? Math.min(Math.max((atMm - alongMm[a]!) / stepMm, 0), 1) : 1
  if (part === 1) return high
  if (part === 0) return low
  return typeof low === 'number' && typeof high === 'number' ? low + part * (high - low) : 'none'
}

/** The entries behind the rows of a list, where it is a collection; twins of one brace are told apart. */
function entriesOf(plan: Plan, numbers: Numbers, list: string | null): readonly string[] | null {
  if (list === 'rosette.rings') return ringsInOrder(plan.rosette).map(({ id }) => id)
  if (list === 'braces') return numbers.braces.map(({ id, half }) => `${id} ${half}`)
  return null
}
