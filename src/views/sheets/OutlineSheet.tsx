import { useMemo } from 'react'
import { KEY_WIDTH_FIELDS } from '../../core/plan.ts'
import { planDrawing } from '../../drawing/planDrawing.ts'
import { OUTLINE_WORDS } from '../../words/sheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { FoundTable } from './FoundTable.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { PieceEditor } from './PieceEditor.tsx'
import { PlanFieldControl } from './PlanFieldControl.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { LeadingDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'

/** What shape is the body? */
export function OutlineSheet() {
  const { plan, computed } = useSheetBench()
  const drawing = useMemo(() => planDrawing(computed), [computed])
  const byArcs = plan.outline.kind === 'compassArcs'
  return (
    <QuestionSheet
      sheet="outline"
      tools={<OriginSwitch />}
      main={
        <>
          <LeadingDrawing drawing={drawing} />
          <div className="big-figures">
            <BigFigure number="body.lengthMm" size={44} />
            <BigFigure number="body.lowerBoutMm" size={44} />
            <BigFigure number="body.waistMm" size={44} />
            <BigFigure number="body.upperBoutMm" size={44} />
          </div>
          <FoundTable />
        </>
      }
      margin={
        <>
          <section className="sheet-fields">
            <PlanFieldControl field="outline.kind" />
            <PlanFieldControl field="outline.lengthMm" solvedMm={computed.numbers.body.lengthMm} />
          </section>
          {byArcs ? <PieceEditor /> : <PlanFields heading={OUTLINE_WORDS.keyWidths} fields={KEY_WIDTH_FIELDS} />}
        </>
      }
    />
  )
}
