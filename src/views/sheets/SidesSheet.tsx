import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react'
import { type PlaceRow, rimRowAt } from '../../core/instrument/rim.ts'
import { nextStationMm, stationAt, WAYS_ALONG, type WayAlong } from '../../core/instrument/placeByX.ts'
import type { NumberRef } from '../../drawing/drawing.ts'
import { blankDrawing } from '../../drawing/blankDrawing.ts'
import { markOnBlank, markOnSide } from '../../drawing/placeMark.ts'
import { sideDrawing } from '../../drawing/sideDrawing.ts'
import { ALONG_WORDS, BLANK_WORDS, PLACE_WORDS, SIDES_WORDS, TABLE_WORDS } from '../../words/sheets.ts'
import { BigFigure } from './BigFigure.tsx'
import { OriginSwitch } from './OriginSwitch.tsx'
import { PlacePicker } from './PlacePicker.tsx'
import { PlanFields } from './PlanFields.tsx'
import { QuestionSheet } from './QuestionSheet.tsx'
import { RimTables } from './RimTables.tsx'
import { SIDE_COLUMNS } from './rimColumns.ts'
import { LeadingDrawing, SheetDrawing } from './SheetDrawing.tsx'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import { Switch } from './Switch.tsx'

const BLANK_SIDES = (['treble', 'bass'] as const).map((value) => ({ value, label: BLANK_WORDS.sides[value] }))
const ALONG_CHOICES = WAYS_ALONG.map((value) => ({ value, label: ALONG_WORDS[value] }))
const MOST_TIMES = 20

/** How deep is the side here? And where is the flat blank sawn? */
export function SidesSheet() {
  const { computed } = useSheetBench()
  const { numbers, geometry } = computed
  const [placeMm, setPlaceMm] = useState<number>(() => startingPlaceMm(numbers.sides.waistMarkOnRimMm))
  const [along, chooseAlong] = useState<WayAlong>('outerFace')
  const [heightsTimes, setHeightsTimes] = useState(1)
  const [side, chooseSide] = useState<'treble' | 'bass'>('treble')
  const named = useMemo(() => numbers.places.map((one) => one.alongOuterMm), [numbers])
  const stations = useMemo(() => numbers.rim.map((one) => one.alongOuterMm), [numbers])
  const here = useMemo(() => rimRowAt(geometry.rimSite, placeMm), [geometry, placeMm])
  const unmarked = useMemo(() => sideDrawing(computed, heightsTimes), [computed, heightsTimes])
  const drawing = useMemo(() => markOnSide(unmarked, computed, here), [unmarked, computed, here])
  // Further down the sheet: it follows a stroke after what stands above it.
  const later = useDeferredValue(computed)
  const plainBlank = useMemo(() => blankDrawing(later, side), [later, side])
  const blank = useMemo(() => markOnBlank(plainBlank, later, here, side), [plainBlank, later, here, side])
  const station = stationAt(stations, here.alongOuterMm)
  const place = stationAt(named, here.alongOuterMm)
  const hereName =
    place !== null ? placeName(numbers.places[place]) : station === null ? null : SIDES_WORDS.station(station)
  // A named place and a station may be one; the name comes first, as it does in the drawing.
  const rows = place === null ? 'rim' : 'places'
  const row = place ?? station

  const { light } = useSheetPointer()
  const takeNumber = useCallback(
    ({ key, row: tappedRow }: NumberRef): void => {
      const list = key.startsWith('rim[].') ? numbers.rim : key.startsWith('places[].') ? numbers.places : []
      const tapped = tappedRow === null ? undefined : list[tappedRow]
      if (tapped !== undefined) setPlaceMm(tapped.alongOuterMm)
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
        </>
      }
      answer={
        <>
          <PlacePicker
            placeMm={here.alongOuterMm}
            along={along}
            named={hereName}
            toTailMm={nextStationMm(stations, here.alongOuterMm, 'tail')}
            toNeckMm={nextStationMm(stations, here.alongOuterMm, 'neck')}
            onPlace={setPlaceMm}
          />
          <div className="big-figures" aria-live="polite">
            <BigFigure
              number={`${rows}[].depthMm`}
              row={row}
              value={here.depthMm}
              name={SIDES_WORDS.depthHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].cutWidthMm`}
              row={row}
              value={here.cutWidthMm}
              name={SIDES_WORDS.cutHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].backBevelRad`}
              row={row}
              value={here.backBevelRad}
              name={SIDES_WORDS.backBevelHere}
              size={72}
            />
            <BigFigure
              number={`${rows}[].topBevelRad`}
              row={row}
              value={here.topBevelRad}
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
          <h2>{BLANK_WORDS.title}</h2>
          <p className="second">{BLANK_WORDS.lead}</p>
          <div className="big-figures">
            <BigFigure number="sides.blankLengthMm" size={44} />
            <BigFigure number="sides.blankWidthMm" size={44} />
            <BigFigure number="sides.waistMarkOnBlankMm" size={44} />
          </div>
          <Switch label={BLANK_WORDS.side} value={side} choices={BLANK_SIDES} onChoose={chooseSide} />
          <SheetDrawing drawing={blank} onNumber={takeNumber} />
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
          <section className="sheet-fields">
            <h2>{SIDES_WORDS.withPlates}</h2>
            <BigFigure number="sides.bodyDepthAtTailMm" size={44} />
            <BigFigure number="sides.bodyDepthAtNeckMm" size={44} />
          </section>
        </>
      }
      foot={<RimTables columns={SIDE_COLUMNS} fileName="sides" placeMm={here.alongOuterMm} onPlace={setPlaceMm} />}
    />
  )
}

/** The waist is what every bender looks up; a body without one starts at the tail. */
const startingPlaceMm = (waistMm: number | 'flat' | 'none'): number => (typeof waistMm === 'number' ? waistMm : 0)

const placeName = (row: PlaceRow | undefined): string | null => (row === undefined ? null : PLACE_WORDS[row.place])
