import { useDeferredValue, useMemo } from 'react'
import { pieceAt, placeOf } from '../../core/instrument/placeOnSide.ts'
import type { RimRow } from '../../core/instrument/rim.ts'
import type { NumberRef } from '../../drawing/drawing.ts'
import { drawingOf } from '../../drawing/drawingOf.ts'
import { type HalfName, woodOf } from '../../drawing/innerFace.ts'
import { markOnBlank } from '../../drawing/placeMark.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { BLANK_WORDS } from '../../words/bodySheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { SheetDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'
import { hasOwnTreble } from './sideInHand.ts'
import { Switch } from '../../ui/Switch.tsx'

export const SIDE_CHOICES = (['treble', 'bass'] as const).map((value) => ({ value, label: BLANK_WORDS.sides[value] }))

interface Props {
  readonly side: HalfName
  readonly onSide: (side: HalfName) => void
  /** The place in hand, as far as what is drawn knows it, and the piece of the side it is on, counted from 0. */
  readonly here: RimRow
  readonly piece: number
  readonly onNumber: (ref: NumberRef) => void
}

/** Where the flat blanks of one side are sawn. Mirrored sides have the same figures, and the switch stands by the drawing it turns. */
export function BlankPart({ side, onSide, here, piece, onNumber }: Props) {
  // Further down the sheet: it follows a stroke after what stands above it.
  const { computed, builtPlan } = useSheetBench()
  const later = useDeferredValue(computed)
  const isOwn = hasOwnTreble(later)
  const laterPlan = useDeferredValue(builtPlan)
  const plain = useMemo(() => {
    const name = side === 'bass' ? 'blankBass' : 'blankTreble'
    return woodOf(later.geometry, side).map((_, piece) => drawingOf(name, later, laterPlan, { piece }))
  }, [later, side, laterPlan])
  const blanks = useMemo(
    () => plain.map((blank, i) => (i === piece ? markOnBlank(blank, later, here) : blank)),
    [plain, later, here, piece],
  )
  return (
    <>
      <h2>{BLANK_WORDS.title}</h2>
      <p className="second">{isOwn ? BLANK_WORDS.leadDiffering : BLANK_WORDS.lead}</p>
      {!isOwn && (
        <>
          <div className="big-figures">
            <BigFigure number="sides.blankLengthMm" size={44} />
            <BigFigure number="sides.blankWidthMm" size={44} />
            <BigFigure number="sides.waistMarkOnBlankMm" size={44} />
          </div>
          <Switch label={BLANK_WORDS.side} value={side} choices={SIDE_CHOICES} onChoose={onSide} />
        </>
      )}
      {blanks.map((blank, i) => (
        <section key={`${side}${String(i)}`}>
          {isOwn && <BlankFigures side={side} piece={i} />}
          <SheetDrawing drawing={blank} onNumber={onNumber} />
        </section>
      ))}
    </>
  )
}

/** Length and width of one blank, and the waist mark where the waist lies on it. */
function BlankFigures({ side, piece }: { readonly side: HalfName; readonly piece: number }) {
  const { numbers, geometry } = useSheetBench().computed
  const row = side === 'bass' ? 0 : piece + 1
  const list = side === 'bass' ? 'places' : 'treblePlaces'
  const waistRow = numbers[list].findIndex(({ place }) => place === 'waist')
  const waist = numbers[list][waistRow]
  const hasWaist = waist !== undefined && pieceAt(woodOf(geometry, side), placeOf(waist)) === piece
  return (
    <div className="big-figures">
      <BigFigure number="blanks[].blankLengthMm" row={row} size={44} />
      <BigFigure number="blanks[].blankWidthMm" row={row} size={44} />
      {hasWaist && (
        <BigFigure
          number={`${list}[].alongBlankMm`}
          row={waistRow}
          name={NUMBER_NAMES['sides.waistMarkOnBlankMm']}
          size={44}
        />
      )}
    </div>
  )
}
