import { useDeferredValue, useId, useMemo } from 'react'
import { Link } from 'wouter'
import type { LengthQuantity } from '../../core/quantity.ts'
import {
  type BlockBoards,
  type BoardFit,
  type DishFit,
  type DomeDishes,
  fixtureFits,
  type Wanted,
} from '../../core/fixtureFits.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { FIT_WORDS, fixtureName, KIND_WANTED } from '../../words/fixtures.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { useSheetBench } from './sheetBench.ts'
import './fixtureFits.css'

type BoardOrDish = Exclude<Wanted, 'mould' | 'bendingForm'>

/** Which of the shop's boards or dishes serves here, the largest gap it leaves, and what comes next. Nothing where none is wanted. */
export function FixtureFits({ wanted }: { readonly wanted: BoardOrDish }) {
  const { computed, fixtures } = useSheetBench()
  const later = useDeferredValue(computed)
  const [found] = useMemo(() => fixtureFits(later, fixtures, [wanted]), [later, fixtures, wanted])
  const headingId = useId()
  if (found === undefined || found.wanted === 'mould' || found.wanted === 'bendingForm') return null
  return (
    <section className="fixture-fit" aria-labelledby={headingId}>
      <h3 id={headingId}>{FIT_WORDS.heading[wanted]}</h3>
      <FitAnswer found={found} />
    </section>
  )
}

function FitAnswer({ found }: { readonly found: BlockBoards | DomeDishes }) {
  const { units } = useSheetBench()
  const kind = KIND_WANTED[found.wanted]
  const quantity: LengthQuantity = kind === 'dish' ? 'domeRadius' : 'bodyLength'
  const [best, next] = found.fits
  if (best === undefined) return <NoFixture wanted={found.wanted} />
  const needed = 'spanMm' in found ? figureText(formatQuantity(found.spanMm, 'bodyLength', units)) : ''
  const narrow = (fit: BoardFit | DishFit): string | null =>
    'isWideEnough' in fit && !fit.isWideEnough
      ? FIT_WORDS.tooNarrow(figureText(formatQuantity(fit.diameterMm, 'bodyLength', units)), needed)
      : null
  const radiusText = (fit: BoardFit | DishFit) => figureText(formatQuantity(fit.radiusMm, quantity, units))
  return (
    <>
      <dl className="fixture-best">
        <div>
          <dt>{`${FIT_WORDS.radius} ${radiusText(best)}`}</dt>
          <dd>{fixtureName(best.name, kind)}</dd>
        </div>
        <div>
          <dt>{FIT_WORDS.largestGap}</dt>
          <dd>
            <FigureText figure={formatQuantity(best.gapMm, 'thickness', units)} words={FIGURE_WORDS} />
          </dd>
        </div>
      </dl>
      <p>{FIT_WORDS.opens[best.opens]}</p>
      {narrow(best) !== null && <p className="fixture-narrow">{narrow(best)}</p>}
      {next !== undefined && (
        <p className="second">
          {FIT_WORDS.next} {fixtureName(next.name, kind)}, {FIT_WORDS.radius} {radiusText(next)},{' '}
          {FIT_WORDS.gapThere(figureText(formatQuantity(next.gapMm, 'thickness', units)), next.opens)}
          {narrow(next) !== null && ` ${narrow(next)}`}
        </p>
      )}
    </>
  )
}

/** The shop has none of that kind, and where to write one down. */
export function NoFixture({ wanted }: { readonly wanted: Wanted }) {
  return (
    <p>
      {FIT_WORDS.none[KIND_WANTED[wanted]]} <Link href="/shop">{FIT_WORDS.toShop}</Link>
    </p>
  )
}
