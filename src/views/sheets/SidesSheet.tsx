import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react'
import { nextStationMm, WAYS_ALONG, type WayAlong } from '../../core/instrument/placeByX.ts'
import { type PlaceOnSide, placeOf, rowAtPlace, rowIndexAt } from '../../core/instrument/placeOnSide.ts'
import type { RimRow, TrebleRow } from '../../core/instrument/rim.ts'
import type { NumberRef } from '../../drawing/drawing.ts'
import { type HalfName, woodOf } from '../../drawing/innerFace.ts'
import { drawingOf } from '../../drawing/drawingOf.ts'
import { markOnSide } from '../../drawing/placeMark.ts'
import { SIDES_WORDS, TABLE_WORDS } from '../../words/bodySheets.ts'
import { ALONG_WORDS, PLACE_WORDS } from '../../words/measuring.ts'
import { BigFigure } from './BigFigure.tsx'
import { BlankPart, SIDE_CHOICES } from './BlankPart.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { PlacePicker } from './PlacePicker.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { RimTables } from './RimTables.tsx'
import { SIDE_COLUMNS } from './rimColumns.ts'
import { LeadingDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import { hasOwnTreble, RIM_LISTS, type SideInHand, sideInHand } from './sideInHand.ts'
import { Switch } from '../../ui/Switch.tsx'

const ALONG_CHOICES = WAYS_ALONG.map((value) => ({ value, label: ALONG_WORDS[value] }))
const MOST_TIMES = 20

/** How deep is the side here? And where is the flat blank sawn? A treble side of its own is looked at apart from the bass side. */
export function SidesSheet() {
  const { computed, builtPlan, planned } = useSheetBench()
  const { numbers } = computed
  const isOwn = hasOwnTreble(computed)
  const [side, chooseSide] = useState<HalfName>('treble')
  // Sides that mirror each other are one: it is drawn from the treble side, and only the blank is turned.
  const half = isOwn ? side : 'treble'
  const rim = useMemo(() => sideInHand(computed, half), [computed, half])
  const [at, setAt] = useState<PlaceOnSide>(() => startingPlace(rim))
  const [along, chooseAlong] = useState<WayAlong>('outerFace')
  const [heightsTimes, setHeightsTimes] = useState(1)
  const { row: here } = useMemo(() => rowAtPlace(woodOf(computed.geometry, half), at), [computed, half, at])
  // A stroke shows in its field and in the figures at once; what is drawn follows them, all of it together.
  const later = useDeferredValue(computed)
  const laterPlan = useDeferredValue(builtPlan)
  const plannedHere = useMemo(
    () => (planned === null ? null : rowAtPlace(woodOf(planned.geometry, half), at).row),
    [planned, half, at],
  )
  const unmarked = useMemo(
    () => drawingOf('side', later, laterPlan, { heightsTimes, side: half }),
    [later, laterPlan, heightsTimes, half],
  )
  const drawn = useMemo(() => rowAtPlace(woodOf(later.geometry, half), at), [later, half, at])
  const drawing = useMemo(() => markOnSide(unmarked, later, drawn.row), [unmarked, later, drawn])
  const stations = useMemo(() => rim.stations.map((one) => one.alongOuterMm), [rim])
  const station = rowIndexAt(rim.stations, here.alongOuterMm, here.alongBlankMm)
  const place = rowIndexAt(rim.places, here.alongOuterMm, here.alongBlankMm)
  const named = place === null ? undefined : rim.places[place]
  const hereName =
    named !== undefined ? PLACE_WORDS[named.place] : station === null ? null : SIDES_WORDS.station(station)
  // A named place and a station may be one; the name comes first, as it does in the drawing.
  const rows = place === null ? rim.stationList : rim.placeList
  const row = place ?? station

  const { light } = useSheetPointer()
  const takeAlong = useCallback((alongMm: number): void => setAt({ alongMm, blank: null }), [])
  const takeRow = useCallback((_alongMm: number, taken: RimRow | TrebleRow): void => setAt(placeOf(taken)), [])
  const takeNumber = useCallback(
    ({ key, row: tappedRow }: NumberRef): void => {
      const list = RIM_LISTS.find((one) => key.startsWith(`${one}[].`))
      const tapped = list === undefined || tappedRow === null ? undefined : numbers[list][tappedRow]
      if (tapped !== undefined) setAt(placeOf(tapped))
    },
    [numbers],
  )
  // The place in hand is the one that is lit.
  useEffect(() => light(row === null ? null : { key: `${rows}[].depthMm`, row }), [light, rows, row])

  return (
    <QuestionSheet
      sheet="sides"
      tools={
        <>
          <Switch label={TABLE_WORDS.measureAlong} value={along} choices={ALONG_CHOICES} onChoose={chooseAlong} />
          <OriginSwitch />
          {isOwn && <Switch label={SIDES_WORDS.side} value={side} choices={SIDE_CHOICES} onChoose={chooseSide} />}
        </>
      }
      answer={
        <>
          <PlacePicker
            side={half}
            placeMm={here.alongOuterMm}
            along={along}
            named={hereName}
            toTailMm={nextStationMm(stations, here.alongOuterMm, 'tail')}
            toNeckMm={nextStationMm(stations, here.alongOuterMm, 'neck')}
            onPlace={takeAlong}
          />
          <div className="big-figures" aria-live="polite">
            <BigFigure
              number={`${rows}[].depthMm`}
              row={row}
              value={here.depthMm}
              plannedValue={plannedHere?.depthMm ?? null}
              name={SIDES_WORDS.depthHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].cutWidthMm`}
              row={row}
              value={here.cutWidthMm}
              plannedValue={plannedHere?.cutWidthMm ?? null}
              name={SIDES_WORDS.cutHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].backBevelRad`}
              row={row}
              value={here.backBevelRad}
              plannedValue={plannedHere?.backBevelRad ?? null}
              name={SIDES_WORDS.backBevelHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].topBevelRad`}
              row={row}
              value={here.topBevelRad}
              plannedValue={plannedHere?.topBevelRad ?? null}
              name={SIDES_WORDS.topBevelHere}
              size={72}
            />
          </div>
          <p className="second small">{SIDES_WORDS.bevelNote}</p>
        </>
      }
      main={
        <>
          <LeadingDrawing
            drawing={drawing}
            onNumber={takeNumber}
            heights={{ most: MOST_TIMES, onChange: setHeightsTimes }}
          />
          <BlankPart side={side} onSide={chooseSide} here={drawn.row} piece={drawn.piece} onNumber={takeNumber} />
        </>
      }
      margin={
        <>
          <PlanFields
            heading={SIDES_WORDS.depths}
            fields={['rim.depthAtTailMm', 'rim.depthAtNeckMm', 'plates.topMm', 'plates.backMm']}
          />
          <PlanFields
            heading={SIDES_WORDS.blank}
            fields={[
              'rim.sideThicknessMm',
              'rim.topAllowanceMm',
              'rim.backAllowanceMm',
              'rim.trimEachEndMm',
              'rim.stationStepMm',
            ]}
          />
          <PlanFields
            heading={SIDES_WORDS.edges}
            fields={['rim.method', 'rim.firstLeavesTopMm', 'rim.firstLeavesBackMm']}
          />
          <section className="sheet-fields">
            <h2>{SIDES_WORDS.withPlates}</h2>
            <BigFigure number="sides.bodyDepthAtTailMm" size={44} />
            <BigFigure number="sides.bodyDepthAtNeckMm" size={44} />
          </section>
        </>
      }
      foot={
        <RimTables
          columns={SIDE_COLUMNS}
          fileName={rim.stationList === 'rim' ? 'sides' : 'sides-treble'}
          side={half}
          placeMm={here.alongOuterMm}
          alongBlankMm={here.alongBlankMm}
          onPlace={takeRow}
        />
      }
    />
  )
}

/** The waist is what every bender looks up; a body without one starts at the tail. */
function startingPlace({ places }: SideInHand): PlaceOnSide {
  const waist = places.find(({ place }) => place === 'waist')
  return waist === undefined ? { alongMm: 0, blank: null } : placeOf(waist)
}
