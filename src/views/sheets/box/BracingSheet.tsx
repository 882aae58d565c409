import { useCallback, useMemo } from 'react'
import { PLATES, type PlateSide } from '../../../core/boxPlan.ts'
import { boxDrawingOf } from '../../../drawing/boxDrawingOf.ts'
import { Switch } from '../../../ui/Switch.tsx'
import { braceName, BRACING_WORDS, PLATE_WORDS } from '../../../words/box/bracing.ts'
import { BigFigure } from '../BigFigure.tsx'
import { Following } from '../Following.tsx'
import { useKeptWhileOpen } from '../keptWhileOpen.ts'
import { NumberList } from '../NumberList.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { SheetDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { BracedPlate } from './BracedPlate.tsx'
import { BraceEditor } from './BraceEditor.tsx'
import { type BraceInHand, bracesOfPlate, rowInHand } from './braceNames.ts'
import { BracePatterns } from './BracePatterns.tsx'
import { ArchTable, BraceTable, CrossingTable, EndsTable, JointStripTable } from './BraceTables.tsx'
import './box.css'

const ARCH_TIMES = 4

/** Where do the braces go? */
export function BracingSheet() {
  const bench = useSheetBench()
  const { computed, plan } = bench
  const [plate, setPlate] = useKeptWhileOpen<PlateSide>('bracing.plate', 'top')
  const [inHand, take] = useKeptWhileOpen<BraceInHand | null>('bracing.brace', null)
  const braces = bracesOfPlate(bench, plate)
  const chosen = braces.find(({ id }) => id === inHand?.id) ?? null
  const rowOfChosen = chosen === null || inHand === null ? null : rowInHand(computed.numbers.braces, inHand)
  const row = rowOfChosen === null ? undefined : computed.numbers.braces[rowOfChosen]
  const choose = useCallback((id: string | null) => take(id === null ? null : { id, half: null }), [take])
  const name = row === undefined ? '' : braceName(row.number, row.kind, row.half)
  return (
    <QuestionSheet
      sheet="bracing"
      tools={
        <Switch
          label={BRACING_WORDS.plate}
          value={plate}
          choices={PLATES.map((value) => ({ value, label: PLATE_WORDS[value] }))}
          onChoose={setPlate}
        />
      }
      drawing={<BracedPlate plate={plate} row={rowOfChosen} onTake={take} />}
      main={
        rowOfChosen === null || row === undefined ? (
          <p>{braces.length === 0 ? BRACING_WORDS.noBraces : BRACING_WORDS.chooseOne}</p>
        ) : (
          <section aria-label={name}>
            <h2>{name}</h2>
            <div className="big-figures">
              <BigFigure number="braces[].lengthMm" row={rowOfChosen} size={72} />
              <BigFigure number="braces[].archRiseMm" row={rowOfChosen} size={72} />
            </div>
          </section>
        )
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
          {plate === 'top' && (
            <PlanFields
              heading={BRACING_WORDS.plateUnderBridge}
              fields={[
                'bridge.plateMm',
                'bridge.plateFromMm',
                'bridge.plateToMm',
                'bridge.plateTailWidthMm',
                'bridge.plateNeckWidthMm',
              ]}
            />
          )}
        </>
      }
      foot={
        <Following>
          {rowOfChosen !== null && <Chosen row={rowOfChosen} name={name} />}
          <BraceTable plate={plate} />
          {plate === 'top' ? <CrossingTable /> : <JointStripTable />}
          {plate === 'top' && plan.bracing.holeRingMm > 0 && (
            <section>
              <h2>{BRACING_WORDS.ring}</h2>
              <NumberList keys={['patches.holeRing.innerRadiusMm', 'patches.holeRing.outerRadiusMm']} />
            </section>
          )}
        </Following>
      }
    />
  )
}

const MORE_FIGURES = [
  'braces[].finishedLengthMm',
  'braces[].blankLengthMm',
  'braces[].undersideRadiusMm',
  'braces[].angleRad',
  'braces[].crossesCentreAtMm',
] as const

/** One brace: what else to cut for it, how it ends, and its arch. */
function Chosen({ row, name }: { readonly row: number; readonly name: string }) {
  const { computed, builtPlan: plan } = useSheetBench()
  const side = useMemo(
    () => boxDrawingOf('braceSide', computed, plan, { brace: row, heightsTimes: ARCH_TIMES }),
    [computed, plan, row],
  )
  const hasSpring = computed.numbers.braces[row]?.springMm !== 'none'
  return (
    <section aria-label={BRACING_WORDS.more(name)}>
      <h2>{BRACING_WORDS.more(name)}</h2>
      <div className="big-figures">
        {MORE_FIGURES.map((key) => (
          <BigFigure key={key} number={key} row={row} size={44} />
        ))}
        {hasSpring && <BigFigure number="braces[].springMm" row={row} size={44} />}
      </div>
      <SheetDrawing drawing={side} mostHeightPx={260} />
      <EndsTable row={row} name={name} />
      <ArchTable row={row} name={name} />
    </section>
  )
}
