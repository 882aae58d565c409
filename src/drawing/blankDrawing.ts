import type { Computed } from '../core/compute.ts'
import { shapesBounds } from './bounds.ts'
import { label, ordinate, outside, running, stationUrgency } from './dimension.ts'
import type { Drawing, Shape } from './drawing.ts'
import { figured, figuredRow } from './figured.ts'
import { drawn, rectangle, through } from './line.ts'
import { stationRows } from './stationRows.ts'
import { curveThrough } from './smooth.ts'

const TICK_MM = 7

/**
 * One side laid flat, show face up: the straight edge it is measured from, the line to saw, trim at both ends, waist mark, stations with
 * their cut widths. The bass blank is the mirror of the treble one, with its tail to the right.
 */
export function blankDrawing({ numbers }: Computed, side: 'treble' | 'bass'): Drawing {
  const { blankLengthMm, blankWidthMm, flatLengthMm, waistMarkOnBlankMm } = numbers.sides
  const trimMm = (blankLengthMm - flatLengthMm) / 2
  const place = (along: number) => (side === 'treble' ? trimMm + along : blankLengthMm - trimMm - along)
  const cut = stationRows(numbers).map(({ at }) => ({ x: place(at.alongBlankMm), y: at.cutWidthMm }))
  const tailX = place(0)
  const neckX = place(flatLengthMm)
  const shapes: Shape[] = [
    drawn('thin', rectangle(0, 0, blankLengthMm, blankWidthMm)),
    drawn(
      'edge',
      through([
        { x: 0, y: 0 },
        { x: blankLengthMm, y: 0 },
      ]),
    ),
    ...[tailX, neckX].map((x) =>
      drawn(
        'hidden',
        through([
          { x, y: 0 },
          { x, y: blankWidthMm },
        ]),
      ),
    ),
    drawn('cut', curveThrough(cut)),
  ]
  const last = numbers.rim.length - 1
  const stations = stationRows(numbers).flatMap(({ row: i, at: row }): Shape[] => {
    const x = place(row.alongBlankMm)
    const foot = { x, y: row.cutWidthMm }
    return [
      {
        kind: 'station',
        row: i,
        ticks: [
          { from: { x, y: 0 }, to: { x, y: TICK_MM } },
          { from: foot, to: { x, y: row.cutWidthMm - TICK_MM } },
        ],
        numberAt: { x, y: 0 },
        away: { x: 0, y: -1 },
        urgency: stationUrgency(i, last),
      },
      ordinate(
        figuredRow('rim[].cutWidthMm', i, row.cutWidthMm),
        { x, y: blankWidthMm },
        { x: 0, y: 1 },
        stationUrgency(i, last),
        true,
      ),
    ]
  })
  const away = side === 'treble' ? 1 : -1
  const tail = { x: tailX, y: blankWidthMm }
  const ordinates = 2
  const waist: Shape[] =
    typeof waistMarkOnBlankMm === 'number'
      ? waistShapes(numbers, place(waistMarkOnBlankMm), away, blankWidthMm, tail, ordinates)
      : []
  return {
    name: side === 'treble' ? 'blankTreble' : 'blankBass',
    seenFrom: side === 'treble' ? 'trebleSide' : 'bassSide',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: side === 'treble' ? { left: 'tail', right: 'neck' } : { left: 'neck', right: 'tail' },
    shapes: [
      ...shapes,
      ...waist,
      outside(figured(numbers, 'sides.blankWidthMm'), 'left', 0, { x: 0, y: 0 }, { x: 0, y: blankWidthMm }),
      outside(
        figured(numbers, 'sides.flatLengthMm'),
        'below',
        blankWidthMm,
        tail,
        { x: neckX, y: blankWidthMm },
        ordinates,
      ),
      outside(
        figured(numbers, 'sides.blankLengthMm'),
        'below',
        blankWidthMm,
        { x: 0, y: blankWidthMm },
        { x: blankLengthMm, y: blankWidthMm },
        ordinates,
      ),
      ...stations,
      label('straightEdge', { x: place(flatLengthMm * 0.14), y: TICK_MM }, { x: 0, y: 1 }),
      label('showFace', { x: place(flatLengthMm * 0.4), y: blankWidthMm * 0.52 }, { x: 0, y: 0 }),
      label('cutLine', { x: place(flatLengthMm * 0.87), y: blankWidthMm * 0.62 }, { x: 0, y: 0 }),
    ],
  }
}

function waistShapes(
  numbers: Computed['numbers'],
  x: number,
  away: 1 | -1,
  blankWidthMm: number,
  tail: { x: number; y: number },
  lanesFree: number,
): Shape[] {
  const row = numbers.places.findIndex(({ place }) => place === 'waist')
  return [
    drawn(
      'edge',
      through([
        { x, y: 0 },
        { x, y: numbers.places[row]?.cutWidthMm ?? blankWidthMm },
      ]),
    ),
    label('waistMark', { x, y: blankWidthMm * 0.52 }, { x: away, y: 0 }),
    ordinate(
      figured(numbers, 'places[].cutWidthMm', Math.max(row, 0)),
      { x, y: blankWidthMm },
      { x: 0, y: 1 },
      0,
      true,
    ),
    running(
      figured(numbers, 'sides.waistMarkOnBlankMm'),
      'below',
      blankWidthMm,
      tail,
      { x, y: blankWidthMm },
      lanesFree,
    ),
  ]
}
