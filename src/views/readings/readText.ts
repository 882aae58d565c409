import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { onAskedSide } from '../../core/verdict.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatReading, parseReading, shopTypedUnit } from '../../format/typedReading.ts'
import { readableRange } from '../../record/bench/readAt.ts'
import { outOfReach, readProblem } from '../../words/measured.ts'

/** What a text read at the bench comes to, in the number's unit; or why it is none, in one sentence. */
export type ReadText =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly sentence: string; readonly spellings: readonly [string, string] | null }

/** Reads a text as the shop reads that kind of number; `asked` tells the side of a place across, and what is near. */
export function readText(text: string, called: string, number: NumberKey, asked: Figure, units: ShopUnits): ReadText {
  const { quantity } = aboutNumber(number)
  const range = readableRange(quantity, asked)
  const read = parseReading(text, shopTypedUnit(quantity, units))
  if (!read.ok) {
    const example = figureText(formatQuantity(typeof asked === 'number' ? asked : range.max, quantity, units))
    const spellings = read.problem.code === 'ambiguous' ? read.problem.readings : null
    return { ok: false, sentence: readProblem(called, read.problem, example), spellings }
  }
  const { value } = read
  if (value >= range.min && value <= range.max) return { ok: true, value: onAskedSide(value, asked, quantity) }
  const understood = figureText(formatReading(value, quantity, units))
  return { ok: false, sentence: outOfReach(called, understood), spellings: null }
}
