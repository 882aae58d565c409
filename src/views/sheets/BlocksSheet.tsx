import { useMemo, useState } from 'react'
import { drawingOf } from '../../drawing/drawingOf.ts'
import { BLOCKS_WORDS } from '../../words/bodySheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { ContourTable } from './ContourTable.tsx'
import { FixtureFits } from './FixtureFits.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { LeadingDrawing, SheetDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'

const MOST_TIMES = 20

/** What curve goes on the blocks? */
export function BlocksSheet() {
  return (
    <QuestionSheet
      sheet="blocks"
      main={
        <>
          <BlockAnswer end="tail" leads />
          <BlockAnswer end="neck" />
        </>
      }
      margin={
        <>
          <PlanFields heading={BLOCKS_WORDS.tail} fields={['blocks.tail.widthMm', 'blocks.tail.thicknessMm']} />
          <PlanFields heading={BLOCKS_WORDS.neck} fields={['blocks.neck.widthMm', 'blocks.neck.thicknessMm']} />
        </>
      }
    />
  )
}

interface AnswerProps {
  readonly end: 'tail' | 'neck'
  readonly leads?: boolean
}

function BlockAnswer({ end, leads = false }: AnswerProps) {
  const { computed, builtPlan } = useSheetBench()
  const [heightsTimes, setHeightsTimes] = useState(5)
  const name = end === 'tail' ? 'blockTail' : 'blockNeck'
  const drawing = useMemo(
    () => drawingOf(name, computed, builtPlan, { heightsTimes }),
    [name, computed, builtPlan, heightsTimes],
  )
  const Drawn = leads ? LeadingDrawing : SheetDrawing
  return (
    <section className="block-answer" aria-labelledby={`block-${end}`}>
      <h2 id={`block-${end}`}>{BLOCKS_WORDS[end]}</h2>
      <div className="big-figures">
        <BigFigure number={`blocks.${end}.contourRadiusMm`} name={BLOCKS_WORDS.radius} size={72} />
        <BigFigure number={`blocks.${end}.contourRiseMm`} name={BLOCKS_WORDS.rise} size={44} />
        <BigFigure number={`blocks.${end}.contourGapMm`} name={BLOCKS_WORDS.gap} size={44} />
      </div>
      <FixtureFits wanted={`${end}Block`} />
      <Drawn drawing={drawing} heights={{ most: MOST_TIMES, onChange: setHeightsTimes }} mostHeightPx={380} />
      <div className="big-figures">
        <BigFigure number={`blocks.${end}.heightAtFaceMm`} name={BLOCKS_WORDS.heightAtFace} size={44} />
        <BigFigure number={`blocks.${end}.heightInsideMm`} name={BLOCKS_WORDS.heightInside} size={44} />
        <BigFigure number={`blocks.${end}.topSlopeRad`} name={BLOCKS_WORDS.topSlope} size={44} />
        <BigFigure number={`blocks.${end}.backSlopeRad`} name={BLOCKS_WORDS.backSlope} size={44} />
      </div>
      <ContourTable end={end} />
    </section>
  )
}
