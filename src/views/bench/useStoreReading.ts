import { useState } from 'react'
import { onAskedSide, type Verdict, verdictOf } from '../../core/verdict.ts'
import { todayHere } from '../../device/today.ts'
import { figureText } from '../../format/figure.ts'
import { formatAllowedRange } from '../../format/formatAllowedRange.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatReading, parseReading, type TypedUnit, withTypedUnit } from '../../format/typedReading.ts'
import { readableRange } from '../../record/bench/readAt.ts'
import { gaugeToday } from '../../state/gaugeStore.ts'
import { AT_HAND_WORDS } from '../../words/atHand.ts'
import { TOOL_WORDS } from '../../words/bodySheets.ts'
import { fieldProblem, outsideRange } from '../../words/fieldProblem.ts'
import { useShop, useWorkshop } from '../workshop.ts'
import { fullName } from './spotPlace.ts'
import type { InHand } from './useInHand.ts'

/** Why a text was not stored. */
export interface PadProblem {
  readonly sentence: string
  /** The two things it can mean, where that is the trouble. */
  readonly spellings: readonly [string, string] | null
}

/** The reading that was stored last on this visit to the stage. */
export interface LastRead {
  readonly readingId: string
  readonly called: string
  /** The place alone, where the number has several. */
  readonly place: string
  readonly figure: string
  readonly verdict: Verdict | null
  readonly quantity: InHand['quantity']
  readonly tolerance: number | null
  readonly at: number
}

/** Stores what was typed for the number in hand; gives back what was stored, or null with the reason in `problem`. */
export function useStoreReading(stageId: string) {
  const { commission, gauges } = useWorkshop()
  const units = useShop((state) => state.shop.units)
  const [problem, setProblem] = useState<PadProblem | null>(null)
  const refuse = (sentence: string, spellings: PadProblem['spellings'] = null): null => {
    setProblem({ sentence, spellings })
    return null
  }

  function store(text: string, unit: TypedUnit, hand: InHand, at: number): LastRead | null {
    const { called, quantity, asked, tool, side } = hand
    const range = readableRange(quantity, asked)
    const allowed = formatAllowedRange(range.min, range.max, quantity, units).text
    const example = figureText(formatQuantity(typeof asked === 'number' ? asked : range.max, quantity, units))
    if (text.trim() === '') return refuse(AT_HAND_WORDS.empty(called, example))
    const read = parseReading(text, unit)
    if (!read.ok) {
      const spellings = read.problem.code === 'ambiguous' ? read.problem.readings : null
      return refuse(fieldProblem(called, read.problem, allowed, example), spellings)
    }
    const { value } = read
    if (value < range.min || value > range.max) {
      const understood = figureText(formatReading(value, quantity, units))
      return refuse(outsideRange(called, understood, value < range.min ? 'below' : 'above', allowed))
    }
    const today = todayHere()
    const name = tool === null ? '' : TOOL_WORDS[tool]
    const gauge = tool === null ? '' : gaugeToday(gauges.store.getState(), tool, today) || name
    const kept = onAskedSide(value, asked, quantity)
    const answer = commission.addReading({
      ...hand.place,
      stageId,
      value: kept,
      typed: withTypedUnit(text, unit),
      gauge,
      planned: asked,
      replaces: hand.reads.find((one) => one.side === side)?.reading?.id ?? null,
    })
    if (!answer.ok)
      return refuse(answer.problem.code === 'readOnly' ? AT_HAND_WORDS.locked : AT_HAND_WORDS.refused(called))
    if (tool !== null && gaugeToday(gauges.store.getState(), tool, today) === null) gauges.choose(tool, '', today)
    setProblem(null)
    return {
      readingId: commission.store.getState().facts.at(-1)?.id ?? '',
      called,
      place: hand.row === '' ? called : fullName('', hand.row, side),
      figure: figureText(formatReading(kept, quantity, units)),
      verdict: verdictOf(kept, asked, hand.tolerance, quantity),
      quantity,
      tolerance: hand.tolerance,
      at,
    }
  }

  return { store, problem, forget: () => setProblem(null) }
}
