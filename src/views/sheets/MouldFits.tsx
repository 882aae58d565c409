import { useDeferredValue, useId, useMemo } from 'react'
import { type MouldFit, fixtureFits } from '../../core/fixtureFits.ts'
import type { Departure } from '../../core/instrument/mouldGap.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { FIT_WORDS, fixtureName, MOULD_WORDS } from '../../words/fixtures.ts'
import { NoFixture } from './FixtureFits.tsx'
import { KeepOutline } from './KeepOutline.tsx'
import { useSheetBench } from './sheetBench.ts'
import './fixtureFits.css'

type MouldKind = 'mould' | 'bendingForm'
const KINDS: readonly MouldKind[] = ['mould', 'bendingForm']
/** As many of each kind as can be taken in at a glance. */
const SHOWN = 2

/** Whether the shop's moulds and bending forms still fit this outline, and where and by how much they do not; and a way to keep one. */
export function MouldFits() {
  const { computed, fixtures } = useSheetBench()
  const later = useDeferredValue(computed)
  const found = useMemo(() => fixtureFits(later, fixtures, KINDS), [later, fixtures])
  const headingId = useId()
  return (
    <section className="mould-fits" aria-labelledby={headingId}>
      <h2 id={headingId}>{MOULD_WORDS.heading}</h2>
      {found.map((one) =>
        one.wanted === 'mould' || one.wanted === 'bendingForm' ? (
          <MouldKindFits key={one.wanted} kind={one.wanted} fits={one.fits} />
        ) : null,
      )}
      <KeepOutline />
    </section>
  )
}

function MouldKindFits({ kind, fits }: { readonly kind: MouldKind; readonly fits: readonly MouldFit[] }) {
  const headingId = useId()
  return (
    <section className="fixture-fit" aria-labelledby={headingId}>
      <h3 id={headingId}>{FIT_WORDS.heading[kind]}</h3>
      {fits.length === 0 ? (
        <NoFixture wanted={kind} />
      ) : (
        <ul>
          {fits.slice(0, SHOWN).map((fit) => (
            <MouldRow key={fit.id} kind={kind} fit={fit} />
          ))}
        </ul>
      )}
    </section>
  )
}

function MouldRow({ kind, fit }: { readonly kind: MouldKind; readonly fit: MouldFit }) {
  const { units } = useSheetBench()
  const thin = (valueMm: number) => figureText(formatQuantity(valueMm, 'thickness', units))
  const { holds, slide, unslidMm } = fit
  return (
    <li className="mould-fit">
      <dl className="fixture-best">
        <div>
          <dt>
            <span className="mould-verdict" data-holds={holds}>
              <VerdictMark holds={holds} />
              {holds ? MOULD_WORDS.verdict.holds : MOULD_WORDS.verdict.not}
            </span>
          </dt>
          <dd>{fixtureName(fit.name, kind)}</dd>
        </div>
        <DepartureFigure name={MOULD_WORDS.outside[kind]} departure={fit.outside} />
        <DepartureFigure name={MOULD_WORDS.inside[kind]} departure={fit.inside} />
      </dl>
      <p className="second">
        {MOULD_WORDS.slid[slide.toward](thin(slide.byMm))} {MOULD_WORDS.unslid(thin(unslidMm))}
      </p>
    </li>
  )
}

function DepartureFigure({ name, departure }: { readonly name: string; readonly departure: Departure }) {
  const { units } = useSheetBench()
  const place = figureText(formatQuantity(departure.atMm, 'bodyLength', units))
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <FigureText figure={formatQuantity(departure.byMm, 'thickness', units)} />
      </dd>
      {departure.atMm !== 'none' && (
        <dd className="mould-place">
          {MOULD_WORDS.at(place)} {MOULD_WORDS.half[departure.half]}
        </dd>
      )}
    </div>
  )
}

/** A tick for what fits, a cross for what does not: never colour alone. */
function VerdictMark({ holds }: { readonly holds: boolean }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      {holds ? <path d="M4 13 10 19 20 5" /> : <path d="M4 4 20 20 M20 4 4 20" />}
    </svg>
  )
}
