import { useEffect, useState } from 'react'
import type { ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import { formatReading } from '../../format/typedReading.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { TOOL_WORDS } from '../../words/bodySheets.ts'
import type { NUMBER_WORDS } from '../../words/numbers.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import type { InHand, SideRead } from './useInHand.ts'
import { offText, VerdictMark, verdictText } from './VerdictMark.tsx'

interface Props {
  readonly hand: InHand
  readonly units: ShopUnits
  /** Opens the pad; null: nothing can be stored from here. */
  readonly onRead: (() => void) | null
  readonly isPadOpen: boolean
}

/** One number as large as an arm is long: what it is, where, how closely, with what; beside it what was read. */
export function NumberInHand({ hand, units, onRead, isPadOpen }: Props) {
  const { name, row, along, side, spot, quantity, asked, isEstimate } = hand
  const how = useHow(hand)
  const figure = formatQuantity(asked, quantity, units)
  const where = [row, along, words.sideOf[side]].filter((part) => part !== '')
  const large = (
    <span className="hand-figure" data-tight={figure.unit === '°' || figure.unit === '"'}>
      <FigureText figure={figure} words={FIGURE_WORDS} />
    </span>
  )
  const canRead = spot.isRead && onRead !== null
  return (
    <div className="hand">
      <h2>
        {name}
        {isEstimate && ` (${words.estimate})`}
      </h2>
      <p className="hand-where">{where.length === 0 ? '\u00a0' : where.join(' \u00b7 ')}</p>
      {canRead ? (
        <button
          className="hand-number"
          type="button"
          aria-label={`${words.read(hand.called)}: ${figureText(figure)}`}
          aria-expanded={isPadOpen}
          onClick={onRead}
        >
          {large}
          <Allowed hand={hand} units={units} hint={isPadOpen ? null : words.tapToRead} />
        </button>
      ) : (
        <p className="hand-number">
          {large}
          <Allowed hand={hand} units={units} hint={null} />
        </p>
      )}
      <p className="hand-how">{how ?? '\u00a0'}</p>
      {spot.isRead && <ReadTable hand={hand} units={units} />}
      <HandNotes hand={hand} />
    </div>
  )
}

function Allowed({ hand, units, hint }: Pick<Props, 'hand' | 'units'> & { readonly hint: string | null }) {
  const { tolerance, quantity, tool, spot } = hand
  const text = tolerance === null ? null : `\u00b1\u2009${figureText(formatTolerance(tolerance, quantity, units))}`
  return (
    <span className="hand-allowed">
      {text !== null && <span>{text}</span>}
      <span>{spot.isRead && tool !== null ? TOOL_WORDS[tool] : words.lookUp}</span>
      {hint !== null && <span className="hand-hint">{hint}</span>}
    </span>
  )
}

/** Asked, read and off by, side by side for both halves. */
function ReadTable({ hand, units }: Pick<Props, 'hand' | 'units'>) {
  const { reads, side, quantity, isSigned } = hand
  const isTwo = reads.length > 1
  return (
    <table className="hand-reads">
      <colgroup>
        <col className="hand-reads-names" />
        {reads.map((one) => (
          <col key={one.side} />
        ))}
      </colgroup>
      <thead className={isTwo ? '' : 'out-of-sight'}>
        <tr>
          <th scope="col">
            <span className="out-of-sight">{words.side}</span>
          </th>
          {reads.map((one) => (
            <th key={one.side} scope="col" data-here={isTwo && one.side === side}>
              {words.sides[one.side] || words.readRow}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">{isSigned ? words.keptAt : words.asked}</th>
          {reads.map((one) => (
            <td key={one.side}>
              <FigureText figure={formatQuantity(hand.asked, quantity, units)} words={FIGURE_WORDS} />
            </td>
          ))}
        </tr>
        <tr>
          <th scope="row">{words.readRow}</th>
          {reads.map((one) => (
            <td key={one.side}>
              {one.reading === null ? (
                <span className="second">{words.notRead}</span>
              ) : (
                <FigureText figure={formatReading(one.reading.value, quantity, units)} />
              )}
            </td>
          ))}
        </tr>
        <tr>
          <th scope="row">{words.difference}</th>
          {reads.map((one) => (
            <td key={one.side}>
              <Difference read={one} hand={hand} units={units} />
            </td>
          ))}
        </tr>
      </tbody>
    </table>
  )
}

function Difference({ read, hand, units }: Pick<Props, 'hand' | 'units'> & { readonly read: SideRead }) {
  const { verdict } = read
  if (verdict === null) return <span className="second">{'\u2013'}</span>
  const said = verdictText(verdict, hand.quantity, units)
  const off = offText(verdict, hand.quantity, units)
  return (
    <span className="verdict">
      <VerdictMark verdict={verdict} />
      <span>{said}</span>
      {off !== said && <span className="second">{off}</span>}
    </span>
  )
}

/** What else is to be said of it, in a line each. */
function HandNotes({ hand }: { readonly hand: InHand }) {
  const { reads, plannedText, defines } = hand
  const isOutside = reads.some((one) => one.isOutside)
  const wasRead = reads.some((one) => one.reading !== null)
  const notes = [
    ...(plannedText === null ? [] : [words.fromReading(plannedText)]),
    ...(isOutside ? [words.outside] : wasRead ? [defines ? words.defines : `${words.forRecord}.`] : []),
  ]
  return <p className="hand-notes">{notes.length === 0 ? '\u00a0' : notes.join(' ')}</p>
}

/** How it is measured, in a sentence; it comes a moment after the number. */
function useHow({ spot }: InHand): string | null {
  const [all, setAll] = useState<typeof NUMBER_WORDS | null>(null)
  useEffect(() => {
    let isHere = true
    const take = async (): Promise<void> => {
      const { NUMBER_WORDS } = await import('../../words/numbers.ts')
      if (isHere) setAll(NUMBER_WORDS)
    }
    void take()
    return () => {
      isHere = false
    }
  }, [])
  if (all === null) return null
  const { how, what } = all[spot.key]
  return spot.isRead ? (how ?? what) : what
}
