import type { Computed } from '../../core/compute.ts'
import { type Curve, curveAt, insetPoint } from '../../core/geometry/curve.ts'
import type { Point } from '../../core/geometry/point.ts'
import { halfWidthAtMm } from '../../core/instrument/body.ts'
import type { PlaceRow, RimPlace } from '../../core/instrument/rim.ts'
import { blockPoints } from '../blockFace.ts'
import { inPlace, label, running, stationUrgency } from '../dimension.ts'
import type { Bounds, Figured, LabelWord, Shape } from '../drawing.ts'
import { figured, figuredAcross } from '../figured.ts'
import { type HalfName, woodOf } from '../innerFace.ts'
import { drawn, through } from '../line.ts'
import { stationRows, trebleStationRows } from '../stationRows.ts'
import { widestRoom } from './titleRoom.ts'

const TICK_MM = 6
/** Nearer to the centreline the lengths along it stand. */
const LEAST_NUMBERED_MM = 14
/** Room along the centreline for the dimensions there, and along the outline for its stations and words. */
const AT_CENTRELINE_MM = 24
const AT_OUTLINE_MM = 24

/** One half of a body on its template: its curve, and on which side of the centreline it is drawn. */
export interface Half {
  readonly side: HalfName
  readonly curve: Curve
  /** Bass lies above the centreline on the sheet, treble below. */
  readonly flip: 1 | -1
  readonly placeList: 'places' | 'treblePlaces'
  /** Bouts, waist and horn, with their rows in that list. */
  readonly places: readonly HalfPlace[]
}
export interface HalfPlace {
  readonly row: number
  readonly at: PlaceRow
  readonly word: LabelWord
}

export function halfOf({ numbers, geometry }: Computed, side: HalfName): Half {
  const { outline } = geometry
  const isOwn = side === 'treble' && !outline.isMirrored
  const rows = isOwn ? numbers.treblePlaces : numbers.places
  return {
    side,
    curve: side === 'bass' ? outline.bass : outline.treble,
    flip: side === 'bass' ? -1 : 1,
    placeList: isOwn ? 'treblePlaces' : 'places',
    places: rows.flatMap((at, row) => {
      const word = PLACE_WORDS[at.place]
      return word === null ? [] : [{ row, at, word }]
    }),
  }
}

/** A point of the half's own frame, both halves upward, on the sheet. */
export const onSheet = ({ flip }: Half, { x, y }: Point): Point => ({ x, y: flip * y })

const PLACE_WORDS: Readonly<Record<RimPlace, LabelWord | null>> = {
  tail: null,
  lowerBout: 'lowerBout',
  waist: 'waist',
  upperBout: 'upperBout',
  horn: 'hornTip',
  neck: null,
}

/** Half-widths at bouts and waist, from the centreline. */
export const halfWidths = (half: Half): Shape[] =>
  half.places.flatMap(({ at: { place, xMm, yMm }, row }) =>
    place === 'horn'
      ? []
      : [
          inPlace(
            figuredAcross(`${half.placeList}[].yMm`, row, yMm),
            'left',
            onSheet(half, { x: xMm, y: 0 }),
            onSheet(half, { x: xMm, y: yMm }),
            0.6,
          ),
        ],
  )

const BESIDE_CORNER_MM = 1e-6

/** The way into the body at an arc length of the half's outer face, of length 1, in the half's own frame; in a corner halfway between both sides. */
export function inwardAt({ curve }: Half, sMm: number): Point {
  const [a, b] = [curveAt(curve, sMm - BESIDE_CORNER_MM).normal, curveAt(curve, sMm + BESIDE_CORNER_MM).normal]
  const [x, y] = [a.x + b.x, a.y + b.y]
  const size = Math.hypot(x, y)
  return size < BESIDE_CORNER_MM ? { x: -b.x, y: -b.y } : { x: -x / size, y: -y / size }
}

/** Their names, so far inside the outline; outside it where that is negative. */
export const placeNames = (half: Half, depthMm: number): Shape[] =>
  half.places.map(({ at: { xMm, yMm, alongOuterMm }, word }) => {
    const into = inwardAt(half, alongOuterMm)
    const at = onSheet(half, { x: xMm + depthMm * into.x, y: yMm + depthMm * into.y })
    const isAcross = Math.abs(into.y) >= Math.abs(into.x)
    return { ...label(word, at, { x: isAcross ? 1 : Math.sign(depthMm * into.x), y: 0 }), isOptional: false }
  })

/** Places along the centreline from the tail, figured inside the piece. */
export function alongCentreline(half: Half, figures: readonly { figure: Figured; x: number }[]): Shape[] {
  const side = half.flip < 0 ? 'above' : 'below'
  return figures.map(({ figure, x }) => running(figure, side, half.flip * 2, { x: 0, y: 0 }, { x, y: 0 }))
}

/** Bouts, waist and horn along the centreline. */
export const placeFigures = (half: Half): { figure: Figured; x: number }[] =>
  half.places.map(({ at: { xMm }, row }) => ({
    figure: figuredAcross(`${half.placeList}[].xMm`, row, xMm),
    x: xMm,
  }))

/** What else stands on the centreline: the saddle line, the hole, the neck. */
export const middleFigures = ({ numbers }: Computed): { figure: Figured; x: number }[] =>
  (['scale.saddleLineMm', 'soundhole.centreMm', 'body.lengthMm'] as const).map((key) => {
    const figure = figured(numbers, key)
    return { figure, x: typeof figure.value === 'number' ? figure.value : 0 }
  })

/** The stations of the rim as ticks inward from the outline, every fifth numbered, all inside the piece; at an edge or a horn there is no room for a number. */
export function halfStations(computed: Computed, half: Half): Shape[] {
  const { numbers, geometry } = computed
  const rows = half.placeList === 'treblePlaces' ? trebleStationRows(numbers) : stationRows(numbers)
  const last = (half.placeList === 'treblePlaces' ? numbers.trebleRim : numbers.rim).length - 1
  return rows.flatMap(({ list, row, at, isEnd }): Shape[] => {
    const sites = woodOf(geometry, half.side)
    const site = list === 'trebleRim' ? sites[numbers.trebleRim[row]!.blank - 1]! : sites[0]!
    const s = at.alongOuterMm - site.startMm
    const [from, to] = [onSheet(half, curveAt(site.half, s).point), onSheet(half, insetPoint(site.half, s, TICK_MM))]
    return [
      {
        kind: 'station',
        list,
        row,
        ticks: [{ from, to }],
        numberAt: to,
        away: { x: (to.x - from.x) / TICK_MM, y: (to.y - from.y) / TICK_MM },
        urgency: row % 5 === 0 && !isEnd && at.yMm > LEAST_NUMBERED_MM ? stationUrgency(row, last) : 9,
      },
    ]
  })
}

/** The part of a block that lies on this half, open along the centreline. */
export function blockOnHalf(computed: Computed, half: Half, end: 'tail' | 'neck'): Shape {
  const points = blockPoints(computed, end)
  const isHere = ({ y }: Point) => y * half.flip >= 0
  const kept = points.flatMap((point, i) => {
    const next = points[(i + 1) % points.length]!
    const own = isHere(point) ? [point] : []
    if (point.y * next.y >= 0) return own
    const part = point.y / (point.y - next.y)
    return [...own, { x: point.x + part * (next.x - point.x), y: 0 }]
  })
  const first = Math.max(
    kept.findIndex(({ y }, i) => y === 0 && kept.at(i - 1)!.y === 0),
    0,
  )
  return drawn('hidden', through([...kept.slice(first), ...kept.slice(0, first)]))
}

/** Where a word finds most room beside the centreline: midway between the two of its marks that stand furthest apart, up to a place. */
export function freeXMm({ numbers, geometry }: Computed, { places }: Half, toMm = geometry.lengthMm): number {
  const marks = [0, numbers.scale.saddleLineMm, numbers.soundhole.centreMm, ...places.map(({ at }) => at.xMm), toMm]
    .filter((x) => x >= 0 && x <= toMm)
    .toSorted((a, b) => a - b)
  const gaps = marks.slice(1).map((to, i) => ({ from: marks[i]!, to }))
  const widest = gaps.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a), { from: 0, to: 0 })
  return (widest.from + widest.to) / 2
}

/** Where the title may stand: the roomiest of the fields between what is drawn across the half. */
export function roomOnHalf({ numbers, geometry }: Computed, half: Half): Bounds | null {
  const { tail, neck } = numbers.blocks
  const { centreMm, radiusMm } = numbers.soundhole
  const at = (x: number) => ({ fromMm: x, toMm: x })
  const taken = [
    { fromMm: Number.NEGATIVE_INFINITY, toMm: tail.thicknessMm },
    { fromMm: geometry.lengthMm - neck.thicknessMm, toMm: Number.POSITIVE_INFINITY },
    { fromMm: centreMm - radiusMm, toMm: centreMm + radiusMm },
    at(numbers.scale.saddleLineMm),
    ...half.places.map((place) => at(place.at.xMm)),
  ]
  return widestRoom(taken, (fromMm, toMm) => {
    const leastMm = Math.min(
      ...Array.from({ length: 9 }, (_, i) => halfWidthAtMm(half.curve, fromMm + ((toMm - fromMm) * i) / 8)),
    )
    const [a, b] = [half.flip * AT_CENTRELINE_MM, half.flip * (leastMm - AT_OUTLINE_MM)]
    return leastMm <= AT_CENTRELINE_MM + AT_OUTLINE_MM ? null : { minY: Math.min(a, b), maxY: Math.max(a, b) }
  })
}
