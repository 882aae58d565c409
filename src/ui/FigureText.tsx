import type { Figure } from '../format/figure.ts'
import './figure.css'

/** A figure as it is set on a sheet: fraction as a fraction, unit small after a thin space. Words come from `words`. */
export function FigureText({
  figure,
  words,
}: {
  readonly figure: Figure
  readonly words?: Readonly<Record<'flat' | 'none', string>>
}) {
  if (figure.word !== null) return <span className="figure">{words?.[figure.word] ?? figure.word}</span>
  const { sign, side, whole, fraction, remainder, unit } = figure
  const minus = sign === '-' ? '\u2212' : ''
  // Most figures of a table: one text in one element, of which there are hundreds.
  if (side === undefined && fraction === null && remainder === null && unit === '')
    return <span className="figure">{`${minus}${whole}`}</span>
  const isTight = unit === '"' || unit === '°' || unit === '%'
  return (
    <span className="figure">
      {side === undefined ? minus : <span className="figure-unit">{`${side}\u2009`}</span>}
      {whole}
      {fraction !== null && (
        <>
          {whole === '' ? '' : '\u2009'}
          <span className="figure-fraction">
            {fraction.numerator}/{fraction.denominator}
          </span>
        </>
      )}
      {unit !== '' && (
        <span className="figure-unit">
          {isTight ? '' : '\u2009'}
          {unit === '"' ? '\u2033' : unit}
        </span>
      )}
      {remainder !== null && <span className="figure-remainder">{`\u2009${remainder.replace('-', '\u2212')}`}</span>}
    </span>
  )
}
