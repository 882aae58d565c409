import { useDeferredValue, useMemo } from 'react'
import { NUMBER_KEYS } from '../../../core/catalogue.ts'
import { neckDrawingOf } from '../../../drawing/neckDrawingOf.ts'
import { BRIDGE_WORDS, STRINGS_WORDS } from '../../../words/neck/sheets.ts'
import { BigFigure } from '../BigFigure.tsx'
import { NumberList } from '../NumberList.tsx'
import { OriginSwitch } from '../OriginSwitch.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { LeadingDrawing, SheetDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { KeyTable } from './KeyTable.tsx'
import { stringNames } from './stringNames.ts'

const ALL = NUMBER_KEYS.filter((key) => key.startsWith('bridge.'))

/** Where does the saddle go? */
export function BridgeSheet() {
  const { computed, plan, builtPlan } = useSheetBench()
  const drawing = useMemo(() => neckDrawingOf('bridge', computed, builtPlan), [computed, builtPlan])
  // Further down the sheet: it follows a stroke after what stands above it.
  const later = useDeferredValue(computed)
  const laterPlan = useDeferredValue(builtPlan)
  const section = useMemo(() => neckDrawingOf('bridgeSection', later, laterPlan), [later, laterPlan])
  const names = stringNames(plan.strings.set)
  return (
    <QuestionSheet
      sheet="bridge"
      tools={<OriginSwitch />}
      main={
        <>
          <div className="big-figures">
            <BigFigure number="bridge.twelfthToBassMm" size={72} />
            <BigFigure number="bridge.twelfthToTrebleMm" size={72} />
          </div>
          <LeadingDrawing drawing={drawing} mostHeightPx={360} />
          <div className="big-figures">
            <BigFigure number="bridge.jointToFrontMm" size={44} />
            <BigFigure number="bridge.slotEndsDifferMm" size={44} />
            <BigFigure number="bridge.hollowAcrossMm" size={44} />
          </div>
          <h2>{BRIDGE_WORDS.section}</h2>
          <div className="big-figures">
            <BigFigure number="bridge.saddleHeightMm" size={44} />
            <BigFigure number="bridge.woodUnderSlotMm" size={44} />
            <BigFigure number="neckSet.stringsOverTopMm" size={44} />
          </div>
          <SheetDrawing drawing={section} mostHeightPx={300} />
          <h2>{BRIDGE_WORDS.all}</h2>
          <NumberList keys={ALL} leavesOutNone />
          <KeyTable
            caption={BRIDGE_WORDS.estimates}
            fileName="intonation"
            head={STRINGS_WORDS.oneString}
            names={names}
            keys={[
              'strings[].compensationMm',
              'strings[].crownBehindLineMm',
              'strings[].saddleShowingMm',
              'strings[].breakRad',
            ]}
          />
          <p className="second small">{BRIDGE_WORDS.estimateNote}</p>
          <KeyTable
            caption={BRIDGE_WORDS.holes}
            fileName="bridge-holes"
            head={STRINGS_WORDS.oneString}
            names={names}
            keys={['pins[].atMm', 'pins[].acrossMm', 'pins[].behindSaddleMm']}
          />
        </>
      }
      margin={
        <>
          <PlanFields
            heading={BRIDGE_WORDS.compensation}
            fields={['bridge.compensation', 'bridge.compensationBassMm', 'bridge.compensationTrebleMm']}
          />
          <PlanFields
            heading={BRIDGE_WORDS.saddle}
            fields={[
              'bridge.saddleShowingMm',
              'bridge.saddleFromFrontMm',
              'bridge.saddleWidthMm',
              'bridge.saddleLengthMm',
              'bridge.slotDepthMm',
              'bridge.saddleTiltDeg',
            ]}
          />
          <PlanFields
            heading={BRIDGE_WORDS.bridge}
            fields={['bridge.thicknessMm', 'bridge.widthMm', 'bridge.lengthMm']}
          />
          <PlanFields
            heading={BRIDGE_WORDS.holds}
            fields={[
              'bridge.holds',
              'bridge.holdsBehindMm',
              'bridge.pinRun',
              'bridge.pinSpreadMm',
              'bridge.tieHoleOverTopMm',
            ]}
          />
          <PlanFields
            heading={BRIDGE_WORDS.plate}
            fields={[
              'bridge.plateMm',
              'bridge.plateFromMm',
              'bridge.plateToMm',
              'bridge.plateTailWidthMm',
              'bridge.plateNeckWidthMm',
            ]}
          />
        </>
      }
    />
  )
}
