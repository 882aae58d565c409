import { useCallback, useMemo, useState } from 'react'
import type { NumberRef } from '../../../drawing/drawing.ts'
import { neckDrawingOf } from '../../../drawing/neckDrawingOf.ts'
import { FRETS_WORDS } from '../../../words/neck/sheets.ts'
import { BigFigure } from '../BigFigure.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { LeadingDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { KeyTable } from './KeyTable.tsx'
import { MarkerPicker } from './MarkerPicker.tsx'
import './neck.css'

const SAW = ['fromNutMm', 'fromLastMm', 'widthMm', 'slotMm', 'wireMm', 'edgeDropMm'] as const
const FAN = ['bassEdgeMm', 'trebleEdgeMm', 'slantRad'] as const
const OVER = ['toSaddleMm', 'radiusMm', 'fallOffMm', 'bassOverMm', 'trebleOverMm'] as const

/** Where do the frets go? */
export function FretsSheet() {
  const { computed, plan, builtPlan } = useSheetBench()
  const { numbers } = computed
  const [wanted, setWanted] = useState(12)
  const last = numbers.frets.length
  const fret = Math.min(wanted, last)
  const drawing = useMemo(() => neckDrawingOf('fretboard', computed, builtPlan), [computed, builtPlan])
  const takeFret = useCallback(({ key, row }: NumberRef): void => {
    if (row !== null && key.startsWith('frets[].')) setWanted(row + 1)
  }, [])
  const names = numbers.frets.map(({ number }) => String(number))
  const keysOf = (list: readonly (typeof SAW | typeof FAN | typeof OVER)[number][]) =>
    list.map((name) => `frets[].${name}` as const)
  const isFanned = plan.scale.fan === 'fanned'
  return (
    <QuestionSheet
      sheet="frets"
      main={
        <>
          <div className="fret-stepper">
            <strong aria-live="polite">{FRETS_WORDS.fretHere(fret)}</strong>
            <button className="button" type="button" disabled={fret <= 1} onClick={() => setWanted(fret - 1)}>
              {FRETS_WORDS.earlier}
            </button>
            <button className="button" type="button" disabled={fret >= last} onClick={() => setWanted(fret + 1)}>
              {FRETS_WORDS.later}
            </button>
          </div>
          <div className="big-figures">
            {isFanned ? (
              <>
                <BigFigure number="frets[].bassEdgeMm" row={fret - 1} size={72} />
                <BigFigure number="frets[].trebleEdgeMm" row={fret - 1} size={72} />
              </>
            ) : (
              <BigFigure number="frets[].fromNutMm" row={fret - 1} size={72} />
            )}
            {!isFanned && <BigFigure number="frets[].widthMm" row={fret - 1} size={44} />}
            <BigFigure number="frets[].slotMm" row={fret - 1} size={44} />
          </div>
          <LeadingDrawing drawing={drawing} onNumber={takeFret} />
          <div className="big-figures">
            <BigFigure number="board.leftUnderSlotMm" size={44} />
            <BigFigure number="board.slotAtEdgeMm" size={44} />
            <BigFigure number="board.overBodyMm" size={44} />
          </div>
          <p className="second small">{FRETS_WORDS.sawNote}</p>
          <KeyTable
            caption={isFanned ? FRETS_WORDS.fanned : FRETS_WORDS.table}
            fileName="frets"
            head={FRETS_WORDS.fret}
            names={names}
            keys={keysOf(isFanned ? [...FAN, ...SAW.slice(2)] : SAW)}
          />
          <KeyTable
            caption={FRETS_WORDS.heights}
            fileName="fret-heights"
            head={FRETS_WORDS.fret}
            names={names}
            keys={keysOf(OVER)}
          />
          <KeyTable
            caption={FRETS_WORDS.markers}
            fileName="markers"
            head={FRETS_WORDS.fret}
            names={numbers.markers.map(({ fret: marked }) => String(marked))}
            keys={['markers[].fromNutMm', 'markers[].acrossMm']}
          />
        </>
      }
      margin={
        <>
          <PlanFields
            heading={FRETS_WORDS.scale}
            fields={[
              'scale.lengthMm',
              'scale.jointFret',
              'scale.frets',
              'scale.fan',
              'scale.trebleLengthMm',
              'scale.squareFret',
            ]}
          />
          <PlanFields
            heading={FRETS_WORDS.board}
            fields={[
              'board.nutWidthMm',
              'board.widthAtTwelfthMm',
              'board.endBeyondLastFretMm',
              'board.thicknessMm',
              'board.surface',
              'board.radiusMm',
              'board.endRadiusMm',
              'board.fallOffMm',
              'board.bindingMm',
            ]}
          />
          <PlanFields
            heading={FRETS_WORDS.wire}
            fields={['frets.crownMm', 'frets.tangMm', 'frets.slotWidthMm', 'frets.slotDepthMm', 'frets.overhangMm']}
          />
          <MarkerPicker />
        </>
      }
    />
  )
}
