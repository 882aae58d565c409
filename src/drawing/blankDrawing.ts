import type { Computed } from '../core/compute.ts'
import type { PlaceRow } from '../core/instrument/rim.ts'
import type { NumberKey, Numbers } from '../core/numbers.ts'
import { shapesBounds } from './bounds.ts'
import { label, ordinate, outside, running, stationUrgency } from './dimension.ts'
import type { Drawing, EdgeMark, Figured, Shape } from './drawing.ts'
import { figured, figuredRow } from './figured.ts'
import { flipped } from './flipped.ts'
import type { HalfName } from './innerFace.ts'
import { drawn, rectangle, through } from './line.ts'
import { runsOnShapes, widthsRunningOn } from './runsOn.ts'
import { curveThrough } from './smooth.ts'
import { onBlank, type StationRow, stationRows, trebleStationRows } from './stationRows.ts'

const TICK_MM = 7
/** Lanes that the turned figures of the stations take under a blank. */
const ORDINATE_LANES = 2

/** One blank: its figures and the stations on it. */
interface Blank {
  readonly name: 'blankTreble' | 'blankHorn' | 'blankBass'
  readonly lengthMm: number
  readonly widthMm: number
  readonly flatLengthMm: number
  readonly length: Figured
  readonly width: Figured
  readonly flatLength: Figured
  readonly stations: readonly StationRow[]
  /** Stations of the whole side. */
  readonly last: number
  readonly waist: WaistMark | null
  readonly ends: { readonly left: EdgeMark; readonly right: EdgeMark }
}
interface WaistMark {
  readonly alongMm: number
  readonly cutWidthMm: number
  readonly along: Figured
  readonly cutWidth: Figured
}

/**
 * One piece of side laid flat, show face up: the straight edge it is measured from, the line to saw, trim at both ends, waist mark where the
 * waist lies on it, stations with their cut widths. A treble blank has its tail to the left, a bass blank to the right. Piece 1 of the treble
 * side runs from a pointed horn to the neck; where there are fewer pieces the last is drawn.
 */
export function blankDrawing(computed: Computed, side: HalfName, piece = 0): Drawing {
  const blank = blankOf(computed, side, piece)
  const { lengthMm, widthMm, flatLengthMm } = blank
  const trimMm = (lengthMm - flatLengthMm) / 2
  const place = (along: number) => trimMm + along
  const runsOn = side === 'bass' ? widthsRunningOn(computed) : []
  const cut = [
    ...blank.stations.map(({ at }) => ({ x: place(at.alongBlankMm), y: at.cutWidthMm })),
    ...runsOn.map(({ alongMm, cutWidthMm }) => ({ x: place(alongMm), y: cutWidthMm })),
  ]
  const tailX = place(0)
  const neckX = place(flatLengthMm)
  const shapes: Shape[] = [
    drawn('thin', rectangle(0, 0, lengthMm, widthMm)),
    drawn(
      'edge',
      through([
        { x: 0, y: 0 },
        { x: lengthMm, y: 0 },
      ]),
    ),
    ...[tailX, neckX].map((x) =>
      drawn(
        'hidden',
        through([
          { x, y: 0 },
          { x, y: widthMm },
        ]),
      ),
    ),
    drawn('cut', curveThrough(cut)),
  ]
  const tail = { x: tailX, y: widthMm }
  const drawing: Drawing = {
    name: blank.name,
    seenFrom: side === 'treble' ? 'trebleSide' : 'bassSide',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: blank.ends,
    shapes: [
      ...shapes,
      ...(blank.waist === null ? [] : waistShapes(blank.waist, place(blank.waist.alongMm), widthMm, tail)),
      ...(side === 'bass' ? runsOnShapes(computed, place, widthMm, ORDINATE_LANES) : []),
      outside(blank.width, 'left', 0, { x: 0, y: 0 }, { x: 0, y: widthMm }),
      outside(blank.flatLength, 'below', widthMm, tail, { x: neckX, y: widthMm }, ORDINATE_LANES),
      outside(blank.length, 'below', widthMm, { x: 0, y: widthMm }, { x: lengthMm, y: widthMm }, ORDINATE_LANES),
      ...stationShapes(blank, place),
      label('straightEdge', { x: place(flatLengthMm * 0.14), y: TICK_MM }, { x: 0, y: 1 }),
      label('showFace', { x: place(flatLengthMm * 0.4), y: widthMm * 0.52 }, { x: 0, y: 0 }),
      label('cutLine', { x: place(flatLengthMm * 0.87), y: widthMm * 0.62 }, { x: 0, y: 0 }),
    ],
  }
  return side === 'treble' ? drawing : flipped(drawing, 'x')
}

function stationShapes({ stations, last, widthMm }: Blank, place: (along: number) => number): Shape[] {
  return stations.flatMap(({ list, row, at }): Shape[] => {
    const x = place(at.alongBlankMm)
    return [
      {
        kind: 'station',
        list,
        row,
        ticks: [
          { from: { x, y: 0 }, to: { x, y: TICK_MM } },
          { from: { x, y: at.cutWidthMm }, to: { x, y: at.cutWidthMm - TICK_MM } },
        ],
        numberAt: { x, y: 0 },
        away: { x: 0, y: -1 },
        urgency: stationUrgency(row, last),
      },
      ordinate(
        figuredRow(`${list}[].cutWidthMm`, row, at.cutWidthMm),
        { x, y: widthMm },
        { x: 0, y: 1 },
        stationUrgency(row, last),
        true,
      ),
    ]
  })
}

function blankOf({ numbers, geometry }: Computed, side: HalfName, piece: number): Blank {
  const { isMirrored } = geometry.outline
  const { sides } = numbers
  if (isMirrored)
    return {
      name: side === 'treble' ? 'blankTreble' : 'blankBass',
      lengthMm: sides.blankLengthMm,
      widthMm: sides.blankWidthMm,
      flatLengthMm: sides.flatLengthMm,
      length: figured(numbers, 'sides.blankLengthMm'),
      width: figured(numbers, 'sides.blankWidthMm'),
      flatLength: figured(numbers, 'sides.flatLengthMm'),
      stations: stationRows(numbers),
      last: numbers.rim.length - 1,
      waist: waistOf(numbers, 'places', 'sides.waistMarkOnBlankMm'),
      ends: { left: 'tail', right: 'neck' },
    }
  const lastPiece = numbers.blanks.length - 2
  const index = side === 'bass' ? 0 : 1 + Math.min(Math.max(piece, 0), lastPiece)
  const { blankLengthMm, blankWidthMm, flatLengthMm } = numbers.blanks[index]!
  const rows = {
    lengthMm: blankLengthMm,
    widthMm: blankWidthMm,
    flatLengthMm,
    length: figured(numbers, 'blanks[].blankLengthMm', index),
    width: figured(numbers, 'blanks[].blankWidthMm', index),
    flatLength: figured(numbers, 'blanks[].flatLengthMm', index),
  }
  if (index === 0)
    return {
      ...rows,
      name: 'blankBass',
      stations: stationRows(numbers),
      last: numbers.rim.length - 1,
      waist: waistOf(numbers, 'places', 'sides.waistMarkOnBlankMm'),
      ends: { left: 'tail', right: 'neck' },
    }
  const { startMm, half } = geometry.trebleSites[index - 1]!
  const isHere = ({ alongOuterMm }: PlaceRow) =>
    alongOuterMm <= startMm + half.lengthMm + 1e-9 && (alongOuterMm > startMm + 1e-9 || index === 1)
  const waist = numbers.treblePlaces.find(({ place }) => place === 'waist')
  return {
    ...rows,
    name: index === 1 ? 'blankTreble' : 'blankHorn',
    stations: onBlank(trebleStationRows(numbers), index),
    last: numbers.trebleRim.length - 1,
    waist:
      waist !== undefined && isHere(waist) ? waistOf(numbers, 'treblePlaces', 'treblePlaces[].alongBlankMm') : null,
    ends: { left: index === 1 ? 'tail' : 'horn', right: index - 1 === lastPiece ? 'neck' : 'horn' },
  }
}

/** The waist mark of a side as its list of places has it. */
function waistOf(numbers: Numbers, list: 'places' | 'treblePlaces', alongKey: NumberKey): WaistMark | null {
  const row = numbers[list].findIndex(({ place }) => place === 'waist')
  const waist = numbers[list][row]
  if (waist === undefined) return null
  return {
    alongMm: waist.alongBlankMm,
    cutWidthMm: waist.cutWidthMm,
    along: figured(numbers, alongKey, alongKey.includes('[]') ? row : null),
    cutWidth: figured(numbers, `${list}[].cutWidthMm`, row),
  }
}

function waistShapes(waist: WaistMark, x: number, widthMm: number, tail: { x: number; y: number }): Shape[] {
  return [
    drawn(
      'edge',
      through([
        { x, y: 0 },
        { x, y: waist.cutWidthMm },
      ]),
    ),
    label('waistMark', { x, y: widthMm * 0.52 }, { x: 1, y: 0 }),
    ordinate(waist.cutWidth, { x, y: widthMm }, { x: 0, y: 1 }, 0, true),
    running(waist.along, 'below', widthMm, tail, { x, y: widthMm }, ORDINATE_LANES),
  ]
}
