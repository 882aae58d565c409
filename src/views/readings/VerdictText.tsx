import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { type Verdict, verdictOf } from '../../core/verdict.ts'
import { figureText } from '../../format/figure.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import { VERDICT_WORDS } from '../../words/measured.ts'
import './verdict.css'

interface Props {
  readonly number: NumberKey
  readonly value: number
  readonly asked: Figure
  readonly tolerance: number | null
  readonly units: ShopUnits
}

/** How a reading stands to what was asked: a shape and words. Nothing where nothing was asked that can be compared. */
export function VerdictText({ number, value, asked, tolerance, units }: Props) {
  const { quantity } = aboutNumber(number)
  const verdict = verdictOf(value, asked, tolerance, quantity)
  if (verdict === null) return null
  const figure = formatTolerance(verdict.off, quantity, units)
  const isEven = verdict.way === 'even' || (figure.fraction === null && !/[1-9]/u.test(figure.whole))
  const off = isEven ? VERDICT_WORDS.even : VERDICT_WORDS[verdict.way === 'over' ? 'over' : 'short'](figureText(figure))
  const kind = kindOf(verdict, isEven)
  return (
    <span className="verdict" data-kind={kind}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {kind === 'within' && <path d="M3 11 L8 16 L17 4" />}
        {kind === 'over' && <path d="M10 17 V4 M4 10 L10 4 L16 10" />}
        {kind === 'short' && <path d="M10 3 V16 M4 10 L10 16 L16 10" />}
        {kind === 'open' && <path d="M4 10 H16" />}
      </svg>
      <span>{verdict.isWithin === true && !isEven ? VERDICT_WORDS.withinBy(off) : off}</span>
    </span>
  )
}

const kindOf = ({ isWithin, way }: Verdict, isEven: boolean): 'within' | 'over' | 'short' | 'open' => {
  if (isWithin === true || isEven) return 'within'
  return isWithin === null ? 'open' : way === 'over' ? 'over' : 'short'
}
