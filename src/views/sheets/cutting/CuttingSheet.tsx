import { useDeferredValue, useMemo } from 'react'
import { cutList } from '../../../core/wood/cutList.ts'
import { groupStock } from '../../../core/wood/stock.ts'
import { CUTTING_WORDS } from '../../../words/box/cutting.ts'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { CutList } from './CutList.tsx'
import { PlankEditor } from './PlankEditor.tsx'
import { PlankLayouts } from './PlankLayouts.tsx'
import { WoodsEditor } from './WoodsEditor.tsx'
import './cutting.css'

/** What do I cut and buy? */
export function CuttingSheet() {
  const bench = useSheetBench()
  // Long tables: they follow a stroke after the field it was made in.
  const plan = useDeferredValue(bench.builtPlan)
  const computed = useDeferredValue(bench.computed)
  const parts = useMemo(() => {
    const { plateMarginMm, lengthMm, widthMm, thicknessMm, kerfMm } = plan.cutting
    return cutList(plan, computed.numbers, { plateMarginMm, lengthMm, widthMm, thicknessMm, sawKerfMm: kerfMm })
  }, [plan, computed])
  const groups = useMemo(() => groupStock(parts, plan.cutting.kerfMm), [parts, plan.cutting.kerfMm])
  return (
    <QuestionSheet
      sheet="cutting"
      main={<CutList groups={groups} />}
      margin={
        <>
          <PlanFields
            heading={CUTTING_WORDS.allowances}
            fields={[
              'cutting.plateMarginMm',
              'cutting.lengthMm',
              'cutting.widthMm',
              'cutting.thicknessMm',
              'cutting.kerfMm',
              'cutting.trimMm',
            ]}
          />
          <PlankEditor />
          <WoodsEditor />
        </>
      }
      foot={<PlankLayouts parts={parts} />}
    />
  )
}
