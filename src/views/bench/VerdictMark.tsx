import type { Verdict } from '../../core/verdict.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import { AT_HAND_WORDS } from '../../words/atHand.ts'

const words = AT_HAND_WORDS.verdict

/** A tick within the tolerance; an arrow up where too much stands, down where too much is gone; a dash where nothing was allowed or asked. */
export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  const kind = kindOf(verdict)
  return (
    <svg className="verdict-mark" viewBox="0 0 20 20" data-kind={kind} aria-hidden="true">
      {kind === 'within' && <path d="M3 11 L8 16 L17 4" />}
      {kind === 'over' && <path d="M10 17 V4 M4 10 L10 4 L16 10" />}
      {kind === 'short' && <path d="M10 3 V16 M4 10 L10 16 L16 10" />}
      {kind === 'open' && <path d="M4 10 H16" />}
    </svg>
  )
}

const kindOf = ({ isWithin, way }: Verdict): 'within' | 'over' | 'short' | 'open' =>
  isWithin === null ? 'open' : isWithin || way === 'even' ? 'within' : way

/** "within", "0.11 over", "0.3 short"; where no tolerance stands, only how far off. */
export function verdictText({ isWithin, way, off }: Verdict, quantity: Quantity, units: ShopUnits): string {
  if (isWithin === true) return words.within
  const figure = formatTolerance(off, quantity, units)
  const isNothing = figure.fraction === null && !/[1-9]/u.test(figure.whole)
  if (way === 'even' || isNothing) return words.even
  return words[way](figureText(figure))
}

/** How far off, whether that is allowed or not. */
export const offText = (verdict: Verdict, quantity: Quantity, units: ShopUnits): string =>
  verdictText({ ...verdict, isWithin: null }, quantity, units)
