import { useCallback, useDeferredValue, useMemo, useState } from 'react'
import type { NumberRef } from '../../drawing/drawing.ts'
import { drawingOf } from '../../drawing/drawingOf.ts'
import { DOMES_WORDS, SIDES_WORDS } from '../../words/bodySheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { FixtureFits } from './FixtureFits.tsx'
import { GapTable } from './GapTable.tsx'
import { PlanFields } from './PlanFields.tsx'
import type { SingleField } from './PlanFieldControl.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { RimTables } from './RimTables.tsx'
import { BEVEL_COLUMNS } from './rimColumns.ts'
import { LeadingDrawing, SheetDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'

const BACK_FIELDS: readonly SingleField[] = ['back.form', 'back.radiusMm']
const TOP_FIELDS: readonly SingleField[] = [
  'top.form',
  'top.radiusMm',
  'top.flatFromMm',
  'top.flatSlopeDeg',
  'top.riseAtSaddleMm',
]
const MOST_TIMES = 40

/** How much dish do back and top have? */
export function DomesSheet() {
  const { computed, builtPlan } = useSheetBench()
  const { numbers } = computed
  const [acrossTimes, setAcrossTimes] = useState(10)
  const [alongTimes, setAlongTimes] = useState(5)
  const [placeMm, setPlaceMm] = useState(0)
  const across = useMemo(
    () => drawingOf('domes', computed, builtPlan, { heightsTimes: acrossTimes }),
    [computed, builtPlan, acrossTimes],
  )
  // Further down the sheet: they follow a stroke after what stands above them.
  const later = useDeferredValue(computed)
  const laterPlan = useDeferredValue(builtPlan)
  const along = useMemo(
    () => drawingOf('section', later, laterPlan, { heightsTimes: alongTimes }),
    [later, laterPlan, alongTimes],
  )
  const bevels = useMemo(() => drawingOf('bevels', later, laterPlan), [later, laterPlan])
  const takeBevel = useCallback(
    ({ key, row }: NumberRef): void => {
      const tapped = row !== null && key.startsWith('rim[].') ? numbers.rim[row] : undefined
      if (tapped !== undefined) setPlaceMm(tapped.alongOuterMm)
    },
    [numbers],
  )
  return (
    <QuestionSheet
      sheet="domes"
      tools={<OriginSwitch />}
      main={
        <>
          <div className="big-figures">
            <BigFigure number="back.gapAcrossLowerBoutMm" size={72} />
            <BigFigure number="top.gapAcrossLowerBoutMm" size={72} />
          </div>
          <LeadingDrawing drawing={across} heights={{ most: MOST_TIMES, onChange: setAcrossTimes }} />
          <GapTable />
          <FixtureFits wanted="backDish" />
          <FixtureFits wanted="topDish" />
          <h2>{DOMES_WORDS.section}</h2>
          <div className="big-figures">
            <BigFigure number="sides.deepestInsideMm" size={44} />
            <BigFigure number="back.lowestUnderRimPlaneMm" size={44} />
            <BigFigure number="top.neckEdgeMm" size={44} />
          </div>
          <SheetDrawing drawing={along} heights={{ most: MOST_TIMES, onChange: setAlongTimes }} />
          <h2>{DOMES_WORDS.bevels}</h2>
          <p className="second">{SIDES_WORDS.bevelNote}</p>
          <SheetDrawing drawing={bevels} onNumber={takeBevel} />
        </>
      }
      margin={
        <>
          <PlanFields heading={DOMES_WORDS.back} fields={BACK_FIELDS} />
          <PlanFields heading={DOMES_WORDS.top} fields={TOP_FIELDS} />
        </>
      }
      foot={<RimTables columns={BEVEL_COLUMNS} fileName="bevels" placeMm={placeMm} onPlace={setPlaceMm} />}
    />
  )
}
