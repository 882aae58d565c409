import { useMemo, useState } from 'react'
import { neckDrawingOf } from '../../../drawing/neckDrawingOf.ts'
import { NECK_SET_WORDS } from '../../../words/neck/sheets.ts'
import { BigFigure } from '../BigFigure.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { gapNames } from '../rowNames.ts'
import { LeadingDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { KeyTable } from './KeyTable.tsx'

const MOST_TIMES = 20

/** How is the neck set? */
export function NeckSetSheet() {
  const { computed, plan, builtPlan } = useSheetBench()
  const { numbers, geometry } = computed
  const [times, setTimes] = useState(5)
  const drawing = useMemo(() => neckDrawingOf('neckSet', computed, builtPlan, times), [computed, builtPlan, times])
  const { gaps, changes } = numbers.neckSet
  const places = gapNames(gaps.length, plan.scale.jointFret)
  const follows = geometry.top.form === 'flatUpperBout' && plan.top.flatSlope === 'neckSet'
  return (
    <QuestionSheet
      sheet="neckSet"
      main={
        <>
          <div className="big-figures">
            <BigFigure number="neckSet.fretPlaneOverTopMm" size={72} />
            <BigFigure number="neckSet.angleRad" size={72} />
          </div>
          <div className="big-figures">
            <BigFigure number="neckSet.fretPlaneOverBridgeMm" size={44} />
            <BigFigure number="neckSet.gapAtEndMm" size={44} />
            {numbers.neckSet.wedgePerMm !== 'none' && <BigFigure number="neckSet.wedgePerMm" size={44} />}
            <BigFigure number="neckSet.faceAtNutMm" size={44} />
          </div>
          {follows && <p className="second small">{NECK_SET_WORDS.onFlat}</p>}
          {plan.neck.joint === 'sidesInHeel' && <p className="second small">{NECK_SET_WORDS.heelFirst}</p>}
          <LeadingDrawing drawing={drawing} heights={{ most: MOST_TIMES, onChange: setTimes }} />
          <div className="big-figures">
            <BigFigure number="neckSet.fretPlaneOverTopStrungMm" size={44} />
            <BigFigure number="neckSet.angleStrungRad" size={44} />
            <BigFigure number="neckSet.angleToTopRad" size={44} />
            <BigFigure number="neckSet.stringsOverTopMm" size={44} />
          </div>
          <KeyTable
            caption={NECK_SET_WORDS.changes}
            fileName="neck-set-changes"
            head={NECK_SET_WORDS.changed}
            names={changes.map(({ what }) => NECK_SET_WORDS.what[what])}
            keys={['neckSet.changes[].actionMm', 'neckSet.changes[].angleRad', 'neckSet.changes[].wedgeMm']}
          />
          <KeyTable
            caption={NECK_SET_WORDS.gaps}
            fileName="neck-set-gaps"
            head={NECK_SET_WORDS.place}
            names={places}
            keys={['neckSet.gaps[].fromJointMm', 'neckSet.gaps[].gapMm']}
          />
        </>
      }
      margin={
        <>
          <PlanFields
            heading={NECK_SET_WORDS.targets}
            fields={[
              'setup.actionBassMm',
              'setup.actionTrebleMm',
              'setup.nutBassMm',
              'setup.nutTrebleMm',
              'setup.reliefMm',
              'setup.riseMm',
            ]}
          />
          <PlanFields
            heading={NECK_SET_WORDS.heights}
            fields={['bridge.thicknessMm', 'bridge.saddleShowingMm', 'board.thicknessMm', 'frets.crownMm']}
          />
          <PlanFields
            heading={NECK_SET_WORDS.joint}
            fields={['neck.joint', 'top.form', 'top.flatFromMm', 'top.flatSlope', 'top.flatSlopeDeg']}
          />
        </>
      }
    />
  )
}
