/**
 * Order strings for entries that come and go one by one: base 36, read as digits after a point, so that there is always room between
 * two. No string ends in '0'.
 */
const DIGITS = '0123456789abcdefghijklmnopqrstuvwxyz'
const BASE = DIGITS.length
/** Longest string the schema takes; a longer one asks for all entries to be spaced anew. */
export const LONGEST_ORDER = 40

interface Ordered {
  readonly order: string
}

/** The entries of a collection in their order, ties by id. */
export function inOrder<Entry extends Ordered>(entries: Readonly<Record<string, Entry>>): [id: string, entry: Entry][] {
  return Object.entries(entries).sort(([idA, a], [idB, b]) => compare(a.order, b.order) || compare(idA, idB))
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/** An order string after `low` and before `high`; null stands for the open end. Crossed ends: right after `low`. */
export function orderBetween(low: string | null, high: string | null): string {
  const top = high !== null && low !== null && compare(low, high) >= 0 ? null : high
  let made = ''
  let freeAbove = top === null
  for (let i = 0; i <= LONGEST_ORDER; i += 1) {
    const from = digitAt(low, i) ?? 0
    const to = freeAbove ? BASE : (digitAt(top, i) ?? 0)
    if (to - from > 1) return made + DIGITS[Math.floor((from + to) / 2)]
    made += DIGITS[from]
    if (to > from) freeAbove = true
  }
  return `${made}i`
}

/** Evenly spaced order strings for a fresh collection. */
export function orderStrings(count: number): string[] {
  const width = count < BASE - 1 ? 1 : 2
  const room = BASE ** width
  return Array.from({ length: count }, (_, i) => {
    const at = Math.floor(((i + 1) * room) / (count + 1))
    const text = at.toString(BASE).padStart(width, '0')
    return text.endsWith('0') ? `${text}i` : text
  })
}

function digitAt(text: string | null, i: number): number | undefined {
  const digit = text?.[i]
  return digit === undefined ? undefined : DIGITS.indexOf(digit)
}

/** Puts one entry before another (null: last) by giving it a new order string; all are spaced anew when the room is used up. */
export function placeBefore(entries: Record<string, { order: string }>, id: string, beforeId: string | null): void {
  const entry = entries[id]
  if (entry === undefined || id === beforeId) return
  const others = inOrder(entries).filter(([other]) => other !== id)
  const found = beforeId === null ? -1 : others.findIndex(([other]) => other === beforeId)
  const at = found < 0 ? others.length : found
  const order = orderBetween(others[at - 1]?.[1].order ?? null, others[at]?.[1].order ?? null)
  entry.order = order
  const ids = [...others.slice(0, at).map(([other]) => other), id, ...others.slice(at).map(([other]) => other)]
  const settled = inOrder(entries).every(([other], i) => other === ids[i])
  if (settled && order.length <= LONGEST_ORDER) return
  for (const [i, fresh] of orderStrings(ids.length).entries()) {
    const one = entries[ids[i] ?? '']
    if (one !== undefined) one.order = fresh
  }
}
