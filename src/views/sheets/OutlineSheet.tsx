import { lazy, Suspense, useMemo } from 'react'
import type { NumberKey } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { CUTAWAY_FIELDS, KEY_WIDTH_FIELDS } from '../../core/planFields.ts'
import { drawingOf } from '../../drawing/drawingOf.ts'
import { FIELD_WORDS } from '../../words/fields.ts'
import { READINGS_WORDS } from '../../words/readings.ts'
import { OUTLINE_WORDS } from '../../words/bodySheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { FoundTable } from './FoundTable.tsx'
import { MouldFits } from './MouldFits.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { PieceEditor } from './PieceEditor.tsx'
import { PlanFieldControl } from './PlanFieldControl.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { ReadingsEditor } from './ReadingsEditor.tsx'
import { LeadingDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'

const DrawnPathPanel = lazy(async () => ({ default: (await import('./DrawnPathPanel.tsx')).DrawnPathPanel }))

const END_FIELDS = [
  'outline.halfWidths.tailRadiusMm',
  'outline.halfWidths.neckFlatMm',
  'outline.halfWidths.neckRadiusMm',
] as const

const CUTAWAY_NUMBERS: readonly NumberKey[] = [
  'cutaway.hornAtMm',
  'cutaway.hornHalfWidthMm',
  'cutaway.hornOnRimMm',
  'cutaway.hornAngleRad',
  'cutaway.angleAtNeckRad',
]

/** What shape is the body? */
export function OutlineSheet() {
  const { plan, computed, builtPlan } = useSheetBench()
  const drawing = useMemo(() => drawingOf('plan', computed, builtPlan), [computed, builtPlan])
  const { kind } = plan.outline
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
          <CutawayFigures />
          <FoundTable />
          <MouldFits />
        </>
      }
      margin={
        <>
          <section className="sheet-fields">
            <PlanFieldControl field="handed" />
            <p className="second small">{FIELD_WORDS.handed.hint}</p>
            <PlanFieldControl field="outline.kind" />
            {kind !== 'drawnPath' && (
              <PlanFieldControl field="outline.lengthMm" solvedMm={computed.numbers.body.lengthMm} />
            )}
          </section>
          {kind === 'compassArcs' && <PieceEditor />}
          {kind === 'keyWidths' && <PlanFields heading={OUTLINE_WORDS.keyWidths} fields={KEY_WIDTH_FIELDS} />}
          {kind === 'halfWidths' && <PlanFields heading={READINGS_WORDS.ends} fields={END_FIELDS} />}
          {kind === 'drawnPath' && (
            <Suspense fallback={null}>
              <DrawnPathPanel />
            </Suspense>
          )}
          <PlanFields heading={FIELD_WORDS['outline.cutaway.form'].name} fields={CUTAWAY_FIELDS} />
        </>
      }
      {...(kind === 'halfWidths' ? { foot: <ReadingsEditor /> } : {})}
    />
  )
}

/** Where the horn stands and what angles the side makes, where there is a cutaway. */
function CutawayFigures() {
  const { plan, computed } = useSheetBench()
  const found = CUTAWAY_NUMBERS.filter((key) => readNumbers(computed.numbers, key)[0] !== 'none')
  if (plan.outline.cutaway.form === 'none' || found.length === 0) return null
  return (
    <>
      <h2>{OUTLINE_WORDS.cutaway}</h2>
      <div className="big-figures">
        {found.map((key) => (
          <BigFigure key={key} number={key} size={44} />
        ))}
      </div>
    </>
  )
}
