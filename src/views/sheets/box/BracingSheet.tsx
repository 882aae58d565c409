import { useCallback, useDeferredValue, useMemo, useState } from 'react'
import { PLATES, type PlateSide } from '../../../core/boxPlan.ts'
import { boxDrawingOf } from '../../../drawing/boxDrawingOf.ts'
import { braceName, BRACING_WORDS, PLATE_WORDS } from '../../../words/box/bracing.ts'
import { BigFigure } from '../BigFigure.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { SheetDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { BracedPlate } from './BracedPlate.tsx'
import { BraceEditor } from './BraceEditor.tsx'
import { type BraceInHand, bracesOfPlate, rowInHand } from './braceNames.ts'
import { BracePatterns } from './BracePatterns.tsx'
import { ArchTable, BraceTable, CrossingTable, JointStripTable } from './BraceTables.tsx'
import './box.css'

const ARCH_TIMES = 4

/** Where do the braces go? */
export function BracingSheet() {
  const bench = useSheetBench()
  const { computed } = bench
  const [plate, setPlate] = useState<PlateSide>('top')
  const [inHand, take] = useState<BraceInHand | null>(null)
  const braces = bracesOfPlate(bench, plate)
  const chosen = braces.find(({ id }) => id === inHand?.id) ?? null
  const rowOfChosen = chosen === null || inHand === null ? null : rowInHand(computed.numbers.braces, inHand)
  const row = rowOfChosen === null ? undefined : computed.numbers.braces[rowOfChosen]
  const choose = useCallback((id: string | null) => take(id === null ? null : { id, half: null }), [])
  return (
    <QuestionSheet
      sheet="bracing"
      tools={
        <fieldset className="field field-choice">
          <legend className="field-label">{BRACING_WORDS.plate}</legend>
          <div className="field-choices">
            {PLATES.map((one) => (
              <label className="choice" key={one}>
                <input type="radio" name="bracing-plate" checked={one === plate} onChange={() => setPlate(one)} />
                <span>{PLATE_WORDS[one]}</span>
              </label>
            ))}
          </div>
        </fieldset>
      }
      main={
        <>
          <BracedPlate plate={plate} row={rowOfChosen} onTake={take} />
          {rowOfChosen === null || row === undefined ? (
            <p>{braces.length === 0 ? BRACING_WORDS.noBraces : BRACING_WORDS.chooseOne}</p>
          ) : (
            <Chosen row={rowOfChosen} name={braceName(row.number, row.kind, row.half)} />
          )}
          <BraceTable plate={plate} />
          {plate === 'top' ? <CrossingTable /> : <JointStripTable />}
        </>
      }
      margin={
        <>
          <BraceEditor key={plate} plate={plate} braces={braces} chosen={chosen} onChoose={choose} />
          <BracePatterns plate={plate} onLaid={() => take(null)} />
          <PlanFields
            heading={BRACING_WORDS.blanks}
            fields={['bracing.blankEndMm', 'bracing.blankHeightMm', 'bracing.blankWidthMm']}
          />
          <PlanFields
            heading={BRACING_WORDS.patches}
            fields={
              plate === 'top'
                ? [
                    'bracing.crossPatchMm',
                    'bracing.crossPatchThicknessMm',
                    'bracing.holeRingMm',
                    'bracing.holeRingSetBackMm',
                    'bracing.holeRingThicknessMm',
                  ]
                : ['bracing.stripWidthMm', 'bracing.stripThicknessMm']
            }
          />
        </>
      }
    />
  )
}

/** One brace, large: what to cut, and its arch. */
function Chosen({ row, name }: { readonly row: number; readonly name: string }) {
  const bench = useSheetBench()
  // Further down the sheet: it follows a stroke after what stands above it.
  const later = useDeferredValue(bench.computed)
  const plan = useDeferredValue(bench.plan)
  const side = useMemo(
    () => boxDrawingOf('braceSide', later, plan, { brace: row, heightsTimes: ARCH_TIMES }),
    [later, plan, row],
  )
  return (
    <section aria-label={name}>
      <h2>{name}</h2>
      <div className="big-figures">
        <BigFigure number="braces[].lengthMm" row={row} size={72} />
        <BigFigure number="braces[].archRiseMm" row={row} size={72} />
      </div>
      <div className="big-figures">
        <BigFigure number="braces[].blankLengthMm" row={row} size={44} />
        <BigFigure number="braces[].undersideRadiusMm" row={row} size={44} />
        <BigFigure number="braces[].angleRad" row={row} size={44} />
      </div>
      <SheetDrawing drawing={side} mostHeightPx={260} />
      <ArchTable row={row} name={name} />
    </section>
  )
}
