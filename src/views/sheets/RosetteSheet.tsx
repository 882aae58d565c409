import { useMemo } from 'react'
import { drawingOf } from '../../drawing/drawingOf.ts'
import { ROSETTE_WORDS } from '../../words/bodySheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { RingEditor } from './RingEditor.tsx'
import { RingTable } from './RingTable.tsx'
import { LeadingDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'

/** Where do I cut for the rosette? */
export function RosetteSheet() {
  const { computed, builtPlan } = useSheetBench()
  const drawing = useMemo(() => drawingOf('rosette', computed, builtPlan), [computed, builtPlan])
  const hasRings = computed.numbers.rosette.rings.length > 0
  return (
    <QuestionSheet
      sheet="rosette"
      main={
        <>
          <div className="big-figures">
            <BigFigure number="soundhole.cutterCircleMm" size={72} />
            {hasRings && <BigFigure number="rosette.channelDepthMm" size={72} />}
            <BigFigure number="soundhole.centreToBoardEndMm" size={44} />
          </div>
          <LeadingDrawing drawing={drawing} mostHeightPx={460} />
          {hasRings && <RingTable />}
        </>
      }
      margin={
        <>
          <PlanFields
            heading={ROSETTE_WORDS.hole}
            fields={['soundhole.centreMm', 'soundhole.radiusMm', 'soundhole.cutterMm']}
          />
          <RingEditor />
          <PlanFields
            heading={ROSETTE_WORDS.channels}
            fields={[
              'rosette.inlayMm',
              'rosette.standsProudMm',
              'rosette.cutterMm',
              'rosette.passOverlapMm',
              'rosette.gapMarginMm',
            ]}
          />
          <PlanFields
            heading={ROSETTE_WORDS.board}
            fields={[
              'scale.lengthMm',
              'scale.jointFret',
              'scale.frets',
              'board.endBeyondLastFretMm',
              'board.widthAtTwelfthMm',
            ]}
          />
        </>
      }
    />
  )
}
