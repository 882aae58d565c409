import { useMemo, useState } from 'react'
import { stationAt } from '../../core/instrument/placeByX.ts'
import { rimRowAt } from '../../core/instrument/rim.ts'
import { drawingOf } from '../../drawing/drawingOf.ts'
import type { HalfName } from '../../drawing/innerFace.ts'
import { LININGS_WORDS } from '../../words/linings.ts'
import { SIDES_WORDS } from '../../words/bodySheets.ts'
import { PLACE_WORDS } from '../../words/measuring.ts'
import { BigFigure } from './BigFigure.tsx'
import { BracePlaces } from './BracePlaces.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { RimTables } from './RimTables.tsx'
import { PROUD_COLUMNS } from './rimColumns.ts'
import { LeadingDrawing, SheetDrawing } from './SheetDrawing.tsx'
import { SideBraceTables } from './SideBraceTable.tsx'
import { useSheetBench } from './sheetBench.ts'
import { TrebleRimTables } from './TrebleRimTable.tsx'

/** One side seen from inside, with its linings and braces. */
function InsideOfSide({ side, leads }: { readonly side: HalfName; readonly leads: boolean }) {
  const { computed, builtPlan } = useSheetBench()
  const drawing = useMemo(() => drawingOf('inside', computed, builtPlan, { side }), [computed, builtPlan, side])
  return leads ? <LeadingDrawing drawing={drawing} /> : <SheetDrawing drawing={drawing} />
}

/** What goes inside the rim? */
export function LiningsSheet() {
  const { computed, plan, planned } = useSheetBench()
  const { numbers, geometry } = computed
  const [placeMm, setPlaceMm] = useState(0)
  const here = useMemo(() => rimRowAt(geometry.rimSite, placeMm), [geometry, placeMm])
  const plannedHere = useMemo(
    () => (planned === null ? null : rimRowAt(planned.geometry.rimSite, placeMm)),
    [planned, placeMm],
  )
  const place = useMemo(() => placeAt(numbers.places, here.alongOuterMm), [numbers, here])
  const station = useMemo(() => placeAt(numbers.rim, here.alongOuterMm), [numbers, here])
  const named = place === null ? undefined : numbers.places[place]
  const rows = place === null ? 'rim' : 'places'
  const row = place ?? station
  const sides: readonly HalfName[] = geometry.outline.isMirrored ? ['treble'] : ['treble', 'bass']
  return (
    <QuestionSheet
      sheet="linings"
      tools={<OriginSwitch />}
      main={
        <>
          <p aria-live="polite">
            <strong>
              {named !== undefined
                ? PLACE_WORDS[named.place]
                : station === null
                  ? SIDES_WORDS.between
                  : SIDES_WORDS.station(station)}
            </strong>
          </p>
          <div className="big-figures">
            <BigFigure
              number={`${rows}[].topProudOuterMm`}
              row={row}
              value={here.topProudOuterMm}
              plannedValue={plannedHere?.topProudOuterMm ?? null}
              name={LININGS_WORDS.topHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].backProudOuterMm`}
              row={row}
              value={here.backProudOuterMm}
              plannedValue={plannedHere?.backProudOuterMm ?? null}
              name={LININGS_WORDS.backHere}
              size={72}
            />
          </div>
          <p className="second small">{LININGS_WORDS.proudNote}</p>
          <div className="big-figures">
            <BigFigure number="linings.toBuyMm" size={44} />
            <BigFigure number="linings.top.ledgeMm" size={44} />
            <BigFigure number="linings.back.ledgeMm" size={44} />
          </div>
          {sides.map((side) => (
            <InsideOfSide key={side} side={side} leads={side === sides[0]} />
          ))}
          <SideBraceTables />
          <h2>{LININGS_WORDS.caul}</h2>
          <p className="second">{LININGS_WORDS.caulLead}</p>
          <div className="big-figures">
            <BigFigure number="caul.bumpMm" size={72} />
            <BigFigure number="caul.clampForceN" size={44} />
            <BigFigure number="caul.stressMPa" size={44} />
          </div>
        </>
      }
      margin={
        <>
          <PlanFields
            heading={LININGS_WORDS.top}
            fields={['linings.top.kind', 'linings.top.widthMm', 'linings.top.heightMm']}
          />
          <PlanFields
            heading={LININGS_WORDS.back}
            fields={['linings.back.kind', 'linings.back.widthMm', 'linings.back.heightMm', 'linings.wastePercent']}
          />
          <PlanFields
            heading={LININGS_WORDS.braces}
            fields={[
              'sideBraces.form',
              'sideBraces.spacingMm',
              'sideBraces.widthMm',
              'sideBraces.thicknessMm',
              'sideBraces.ends',
            ]}
          />
          {plan.sideBraces.form !== 'none' && <BracePlaces />}
          <PlanFields
            heading={LININGS_WORDS.caul}
            fields={['caul.spanMm', 'caul.widthMm', 'caul.heightMm', 'caul.modulusGPa', 'caul.forceN']}
          />
        </>
      }
      foot={
        <>
          <RimTables columns={PROUD_COLUMNS} fileName="linings" placeMm={here.alongOuterMm} onPlace={setPlaceMm} />
          <TrebleRimTables columns={PROUD_COLUMNS} fileName="linings-treble" />
        </>
      }
    />
  )
}

const placeAt = (rows: readonly { readonly alongOuterMm: number }[], placeMm: number): number | null =>
  stationAt(
    rows.map(({ alongOuterMm }) => alongOuterMm),
    placeMm,
  )
