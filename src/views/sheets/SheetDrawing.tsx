import { useMemo } from 'react'
import type { Drawing, NumberRef } from '../../drawing/drawing.ts'
import { DrawingFrame, type HeightsControl } from '../../ui/DrawingFrame.tsx'
import type { DrawingHands } from '../../ui/DrawingHandles.tsx'
import { useSheetFacts } from '../../ui/sheetFacts.ts'
import { enlargedWords, SEEN_FROM_WORDS } from '../../words/drawing.ts'
import { DRAWING_WORDS } from '../../words/drawings.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { drawingFigure } from './drawingFigure.ts'
import { useSheetBench } from './sheetBench.ts'
import { sameNumber, useSheetPointer } from './sheetPointer.ts'

/** Stations are counted from 0, as they are numbered; every other row from 1. */
const STATION_KEYS = /^(?:rim|trebleRim)\[\]/u

interface Props {
  readonly drawing: Drawing
  readonly heights?: HeightsControl
  /** Told of a tapped figure, besides its being lit. */
  readonly onNumber?: (ref: NumberRef) => void
  readonly hands?: DrawingHands
  readonly mostHeightPx?: number
}

/** A drawing on a sheet: figures in the shop's units, a tapped one lit here and wherever else it stands. */
export function SheetDrawing({ drawing, heights, onNumber, hands, mostHeightPx }: Props) {
  const { units } = useSheetBench()
  const { lit, light } = useSheetPointer()
  const formatValue = useMemo(() => drawingFigure(units, FIGURE_WORDS), [units])
  const tapping = useMemo(
    () => ({
      onTap: (ref: NumberRef) => {
        light(sameNumber(lit, ref) ? null : { key: ref.key, row: ref.row })
        onNumber?.(ref)
      },
      nameOf: ({ key, row }: NumberRef) =>
        row === null ? NUMBER_NAMES[key] : `${NUMBER_NAMES[key]}, ${STATION_KEYS.test(key) ? row : row + 1}`,
    }),
    [lit, light, onNumber],
  )
  return (
    <DrawingFrame
      mode="screen"
      drawing={drawing}
      told={DRAWING_WORDS[drawing.name]}
      formatValue={formatValue}
      lit={lit}
      tapping={tapping}
      heights={heights ?? null}
      hands={hands ?? null}
      {...(mostHeightPx === undefined ? {} : { mostHeightPx })}
    />
  )
}

/** Tells the title block what the drawing that leads a sheet shows. */
export function LeadingDrawing(props: Props) {
  const { drawing } = props
  const seenFrom = SEEN_FROM_WORDS[drawing.seenFrom]
  const exaggeration = drawing.heightsTimes === 1 ? {} : { scale: enlargedWords(drawing.name, drawing.heightsTimes) }
  useSheetFacts({ seenFrom, ...exaggeration })
  return <SheetDrawing {...props} />
}
