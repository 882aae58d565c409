import { useDeferredValue, useMemo } from 'react'
import { NUMBER_KEYS } from '../../../core/catalogue.ts'
import { neckDrawingOf } from '../../../drawing/neckDrawingOf.ts'
import { NECK_WORDS, STRINGS_WORDS } from '../../../words/neck/sheets.ts'
import { BigFigure } from '../BigFigure.tsx'
import { NumberList } from '../NumberList.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { LeadingDrawing, SheetDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { isInUse } from '../fieldsInUse.ts'
import { BoltPlaces } from './BoltPlaces.tsx'
import { KeyTable } from './KeyTable.tsx'
import { stringNames } from './stringNames.ts'

const ALL = NUMBER_KEYS.filter((key) => key.startsWith('neck.') || key.startsWith('head.'))

/** How is the neck cut? */
export function NeckSheet() {
  const { computed, plan, builtPlan } = useSheetBench()
  const drawing = useMemo(() => neckDrawingOf('neckSide', computed, builtPlan), [computed, builtPlan])
  // Further down the sheet: it follows a stroke after what stands above it.
  const later = useDeferredValue(computed)
  const laterPlan = useDeferredValue(builtPlan)
  const head = useMemo(() => neckDrawingOf('head', later, laterPlan), [later, laterPlan])
  const hasRod = plan.neck.rod === 'fitted'
  return (
    <QuestionSheet
      sheet="neck"
      main={
        <>
          <div className="big-figures">
            <BigFigure number="neck.heelDepthMm" size={72} />
            <BigFigure number="neck.cheekRad" size={72} />
          </div>
          <div className="big-figures">
            <BigFigure number="neck.woodAtFirstMm" size={44} />
            <BigFigure number="neck.woodAtTenthMm" size={44} />
            {hasRod && <BigFigure number="neck.woodBehindRodMm" size={44} />}
            {computed.numbers.neck.scarfMm !== 'none' && <BigFigure number="neck.scarfMm" size={44} />}
          </div>
          <LeadingDrawing drawing={drawing} mostHeightPx={420} />
          <h2>{NECK_WORDS.headDrawing}</h2>
          <SheetDrawing drawing={head} mostHeightPx={360} />
          <h2>{NECK_WORDS.all}</h2>
          <NumberList keys={ALL} leavesOutNone />
          <KeyTable
            caption={NECK_WORDS.tuners}
            fileName="tuners"
            head={STRINGS_WORDS.oneString}
            names={stringNames(plan.strings.set)}
            keys={['tuners[].fromNutMm', 'tuners[].acrossMm', 'tuners[].sideRad', 'tuners[].overNutRad']}
          />
        </>
      }
      margin={
        <>
          <PlanFields
            heading={NECK_WORDS.joint}
            fields={['neck.joint', 'neck.heelCapMm', 'neck.tenonWidthMm', 'neck.tenonDepthMm', 'neck.boltMm']}
          />
          {isInUse(plan, 'neck.boltsAtMm') && <BoltPlaces />}
          <PlanFields
            heading={NECK_WORDS.shaft}
            fields={[
              'neck.thicknessAtFirstMm',
              'neck.thicknessAtTenthMm',
              'neck.stockMm',
              'neck.rod',
              'neck.rodLengthMm',
              'neck.rodWidthMm',
              'neck.rodDepthMm',
              'neck.rodFromNutMm',
            ]}
          />
          <PlanFields
            heading={NECK_WORDS.head}
            fields={[
              'head.angleDeg',
              'head.lengthMm',
              'head.thicknessMm',
              'head.faceVeneerMm',
              'head.backVeneerMm',
              'head.tuners',
              'head.firstPostMm',
              'head.postSpacingMm',
              'head.firstAcrossMm',
              'head.lastAcrossMm',
              'head.postMm',
              'head.holeMm',
              'head.stringOverFaceMm',
            ]}
          />
        </>
      }
    />
  )
}
