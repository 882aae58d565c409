import type { ShopUnits } from '../../core/quantity.ts'
import { type LengthRange, readLength } from '../../ui/LengthField.tsx'
import { PASTE_WORDS } from '../../words/readings.ts'

export interface Column {
  readonly label: string
  readonly range: LengthRange
}
export type Pair = readonly [firstMm: number, secondMm: number]

export type Pasted =
  | { readonly ok: true; readonly pairs: readonly Pair[]; readonly passedOver: number | null }
  | { readonly ok: false; readonly problems: readonly LineProblem[] }

export interface LineProblem {
  /** Counted from 1 as the lines stand, empty ones too. */
  readonly line: number
  readonly sentence: string
}

type ReadLine = { readonly ok: true; readonly pair: Pair } | { readonly ok: false; readonly sentence: string }

/**
 * Lines of two lengths each, as a spreadsheet or a text file gives them: apart by a tab, a semicolon, a comma or blanks, each in the
 * shop's unit or its own. Once a line has both a comma and a point the commas part; else a comma is a decimal sign where the line can
 * be read in one way only. A first line without a digit is a heading. All lines are read, or every one that cannot be is named.
 */
export function readPasted(text: string, columns: readonly [Column, Column], units: ShopUnits): Pasted {
  const lines = text.split(/\r\n|\r|\n/u).map((line, i) => ({ line: i + 1, text: line.trim() }))
  const written = lines.filter((one) => one.text !== '')
  const heading = written[0] !== undefined && !/\d/u.test(written[0].text) ? written[0] : null
  const rows = heading === null ? written : written.slice(1)
  const commasPart = rows.some(
    (row) => !/[\t;]/u.test(row.text) && /,/u.test(row.text) && /\d\.\d|\.\d/u.test(row.text),
  )
  const pairs: Pair[] = []
  const problems: LineProblem[] = []
  for (const row of rows) {
    const read = readLine(row.text, columns, units, commasPart)
    if (read.ok) pairs.push(read.pair)
    else problems.push({ line: row.line, sentence: read.sentence })
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, pairs, passedOver: heading?.line ?? null }
}

function readLine(text: string, columns: readonly [Column, Column], units: ShopUnits, commasPart: boolean): ReadLine {
  const mark = text.includes('\t') ? '\t' : text.includes(';') ? ';' : commasPart && text.includes(',') ? ',' : null
  if (mark !== null) {
    const cells = text.split(mark).map((cell) => cell.trim())
    const filled = cells.filter((cell) => cell !== '')
    const [first, second] = filled
    if (first === undefined || second === undefined || filled.length > 2)
      return { ok: false, sentence: PASTE_WORDS.count(filled.length) }
    return readPair(first, second, columns, units)
  }
  const ways = waysToPart(text).map(([first, second]) => readPair(first, second, columns, units))
  const [way, another] = ways.filter((one) => one.ok)
  const asOne = readLength(text, columns[0].label, columns[0].range, units)
  if (way !== undefined && another === undefined && !asOne.ok) return way
  if (way !== undefined) return { ok: false, sentence: PASTE_WORDS.unclear }
  if (ways.length === 1 && ways[0] !== undefined) return ways[0]
  const found = text.split(/\s+/u).length
  return asOne.ok || found !== 2
    ? { ok: false, sentence: PASTE_WORDS.count(asOne.ok ? 1 : found) }
    : { ok: false, sentence: asOne.sentence }
}

/** The text cut in two at each of its blanks and commas. */
function waysToPart(text: string): [string, string][] {
  return [...text.matchAll(/\s*,\s*|\s+/gu)].flatMap(({ 0: mark, index }) => {
    const first = text.slice(0, index)
    const second = text.slice(index + mark.length)
    return first === '' || second === '' ? [] : [[first, second]]
  })
}

function readPair(first: string, second: string, columns: readonly [Column, Column], units: ShopUnits): ReadLine {
  const a = readCell(first, columns[0], units)
  if (!a.ok) return a
  const b = readCell(second, columns[1], units)
  return b.ok ? { ok: true, pair: [a.mm, b.mm] } : b
}

type ReadCell = { readonly ok: true; readonly mm: number } | { readonly ok: false; readonly sentence: string }

/** One length. 117,125 could be a decimal or thousands: where only one of them can stand there, that one is meant. */
function readCell(text: string, { label, range }: Column, units: ShopUnits): ReadCell {
  const read = readLength(text, label, range, units)
  if (read.ok) return typeof read.value === 'number' ? { ok: true, mm: read.value } : { ok: false, sentence: text }
  const meant = (read.spellings ?? [])
    .map((spelling) => readLength(spelling, label, range, units))
    .filter((spelt) => spelt.ok)
  const [one, other] = meant
  if (one?.ok && other === undefined && typeof one.value === 'number') return { ok: true, mm: one.value }
  return { ok: false, sentence: read.sentence }
}
