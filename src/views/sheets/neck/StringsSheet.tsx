import { useMemo } from 'react'
import { neckDrawingOf } from '../../../drawing/neckDrawingOf.ts'
import { STRINGS_WORDS } from '../../../words/neck/sheets.ts'
import { BigFigure } from '../BigFigure.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { LeadingDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { KeyTable } from './KeyTable.tsx'
import { OtherTuning } from './OtherTuning.tsx'
import { StringEditor } from './StringEditor.tsx'
import { stringNames } from './stringNames.ts'
import './neck.css'

/** How hard do the strings pull? */
export function StringsSheet() {
  const { computed, plan, builtPlan } = useSheetBench()
  const drawing = useMemo(() => neckDrawingOf('strings', computed, builtPlan), [computed, builtPlan])
  const names = stringNames(plan.strings.set)
  const compares = plan.strings.otherNotes !== null || plan.strings.otherScaleMm !== null
  return (
    <QuestionSheet
      sheet="strings"
      main={
        <>
          <div className="big-figures">
            <BigFigure number="stringSet.tensionN" size={72} />
            <BigFigure number="stringSet.torqueNm" size={72} />
            <BigFigure number="stringSet.gapAtNutMm" size={44} />
          </div>
          {compares && (
            <div className="big-figures">
              <BigFigure number="stringSet.otherTensionN" size={44} />
              <BigFigure number="stringSet.otherTorqueNm" size={44} />
            </div>
          )}
          <LeadingDrawing drawing={drawing} mostHeightPx={420} />
          <p className="second small">{STRINGS_WORDS.caution}</p>
          <OtherTuning />
          <KeyTable
            caption={STRINGS_WORDS.table}
            fileName="strings"
            head={STRINGS_WORDS.oneString}
            names={names}
            keys={[
              'strings[].diameterMm',
              'strings[].massGPerM',
              'strings[].frequencyHz',
              'strings[].tensionN',
              'strings[].stressMPa',
              ...(compares ? (['strings[].otherFrequencyHz', 'strings[].otherTensionN'] as const) : []),
            ]}
          />
          <KeyTable
            caption={STRINGS_WORDS.heights}
            fileName="string-places"
            head={STRINGS_WORDS.oneString}
            names={names}
            keys={[
              'strings[].nutFromBassEdgeMm',
              'strings[].nutAcrossMm',
              'strings[].slotOverBoardMm',
              'strings[].overFirstMm',
              'strings[].overTwelfthMm',
              'strings[].saddleAcrossMm',
              'strings[].saddleShowingMm',
            ]}
          />
        </>
      }
      margin={
        <>
          <PlanFields
            heading={STRINGS_WORDS.spacing}
            fields={['strings.nutSpreadMm', 'strings.saddleSpreadMm', 'strings.pairGapMm', 'strings.pitchHz']}
          />
          <StringEditor />
        </>
      }
    />
  )
}
