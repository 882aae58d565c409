import { useMemo, useState } from 'react'
import { type NumberKey, readNumbers } from '../../../core/numbers.ts'
import { boxDrawingOf } from '../../../drawing/boxDrawingOf.ts'
import { Switch } from '../../../ui/Switch.tsx'
import { EDGES_WORDS } from '../../../words/box/edges.ts'
import { PLACE_WORDS } from '../../../words/measuring.ts'
import { BigFigure } from '../BigFigure.tsx'
import { KeyTable } from '../neck/KeyTable.tsx'
import { LedgeTable } from './LedgeTable.tsx'
import { NumberList } from '../NumberList.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { LeadingDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'

const ALL: readonly NumberKey[] = [
  'edges.sideLeftMm',
  'edges.topLeftMm',
  'edges.backLeftMm',
  'edges.tightestRadiusMm',
  'edges.tightestAtMm',
]
const WEDGE: readonly NumberKey[] = [
  'endWedge.fullMm',
  'endWedge.betweenMm',
  'endWedge.taperRad',
  'endWedge.topMm',
  'endWedge.backMm',
  'endWedge.woodTopMm',
  'endWedge.woodBackMm',
  'endWedge.purflingMm',
  'endWedge.purflingCutMm',
  'endWedge.mitreTopRad',
  'endWedge.mitreBackRad',
  'endWedge.intoBlockMm',
  'endWedge.blockLeftMm',
  'endWedge.besideMm',
]
const BACK_STRIP: readonly NumberKey[] = ['backStrip.chordMm', 'backStrip.arcMm', 'backStrip.cutMm', 'backStrip.leftMm']

/** How are the edges cut? */
export function EdgesSheet() {
  const { computed, plan } = useSheetBench()
  const { numbers } = computed
  const { edges, binding } = plan
  const isBound = binding.thicknessMm > 0
  const hasPurfling = Math.max(binding.topPurflingMm, binding.backPurflingMm) > 0
  const hasWedge = Math.max(edges.wedgeTopMm, edges.wedgeBackMm) > 0
  return (
    <QuestionSheet
      sheet="edges"
      main={
        <>
          {isBound || hasPurfling ? (
            <>
              <div className="big-figures">
                <BigFigure number="edges.ledgeMm" size={72} />
                <BigFigure number="edges.bindingToBuyMm" size={72} />
              </div>
              <EdgeSection />
              <LedgeTable list="edgePlaces" />
              {numbers.trebleEdgePlaces.length > 0 && <LedgeTable list="trebleEdgePlaces" />}
              <p className="second small">{EDGES_WORDS.ledgesNote}</p>
              <KeyTable
                caption={EDGES_WORDS.strips}
                fileName="edge-strips"
                head={EDGES_WORDS.place}
                names={numbers.edgeStrips.map(({ half, plate }) =>
                  EDGES_WORDS.strip(EDGES_WORDS.half[half], EDGES_WORDS.plate[plate]),
                )}
                keys={[
                  'edgeStrips[].bindingMm',
                  'edgeStrips[].bindingCutMm',
                  'edgeStrips[].purflingMm',
                  'edgeStrips[].purflingCutMm',
                  'edgeStrips[].mitreRad',
                ]}
              />
              <h2>{EDGES_WORDS.all}</h2>
              <NumberList keys={ALL.filter((key) => readNumbers(numbers, key)[0] !== 'none')} />
              <p className="second small">{EDGES_WORDS.caution}</p>
            </>
          ) : (
            <p>{EDGES_WORDS.none}</p>
          )}
          <h2>{EDGES_WORDS.wedge}</h2>
          {hasWedge ? (
            <NumberList keys={WEDGE.filter((key) => readNumbers(numbers, key)[0] !== 'none')} />
          ) : (
            <p>{EDGES_WORDS.noWedge}</p>
          )}
          <h2>{EDGES_WORDS.backStrip}</h2>
          {edges.backStripMm > 0 ? <NumberList keys={BACK_STRIP} /> : <p>{EDGES_WORDS.noStrip}</p>}
        </>
      }
      margin={
        <>
          <PlanFields
            heading={EDGES_WORDS.binding}
            fields={['binding.heightMm', 'binding.thicknessMm', 'edges.trimMm']}
          />
          <PlanFields
            heading={EDGES_WORDS.purfling}
            fields={['binding.topPurflingMm', 'binding.backPurflingMm', 'edges.purflingDepthMm']}
          />
          <PlanFields
            heading={EDGES_WORDS.wedge}
            fields={['edges.wedgeTopMm', 'edges.wedgeBackMm', 'edges.wedgeDepthMm', 'edges.wedgePurflingMm']}
          />
          <PlanFields heading={EDGES_WORDS.backStrip} fields={['edges.backStripMm', 'edges.backStripDepthMm']} />
        </>
      }
    />
  )
}

/** The edges cut across at a place the maker chooses. */
function EdgeSection() {
  const { computed, builtPlan } = useSheetBench()
  const [place, choose] = useState(0)
  const drawing = useMemo(
    () => boxDrawingOf('edgeSection', computed, builtPlan, { place }),
    [computed, builtPlan, place],
  )
  return (
    <>
      <Switch
        label={EDGES_WORDS.cutAt}
        value={String(place)}
        choices={computed.numbers.edgePlaces.map((row, i) => ({ value: String(i), label: PLACE_WORDS[row.place] }))}
        onChoose={(value) => choose(Number(value))}
      />
      <LeadingDrawing drawing={drawing} mostHeightPx={380} />
    </>
  )
}
