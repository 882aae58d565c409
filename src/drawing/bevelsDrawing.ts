import type { Computed } from '../core/compute.ts'
import { curveAt } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import type { RimSite } from '../core/instrument/rim.ts'
import { degFromRad } from '../core/units/angle.ts'
import { shapesBounds } from './bounds.ts'
import { curveCommands } from './curvePath.ts'
import { label, ordinate, stationUrgency } from './dimension.ts'
import type { Drawing, Label, PathCommand, Shape } from './drawing.ts'
import { figured, figuredRow } from './figured.ts'
import { moved } from './moved.ts'
import type { HalfName } from './innerFace.ts'
import { drawn, through } from './line.ts'
import { stationRows, trebleStationRows } from './stationRows.ts'

const MM_PER_DEG = 10
const LONGEST_MM = 90
const PAST_ENDS_MM = 30
/** Ends of the two sides that meet here share their place: their figures part. */
const ON_CENTRELINE_MM = 1
/** Between two outlines side by side, for the figures at tail and neck. */
const BETWEEN_MM = 120

/**
 * Bevels round the rim on the outline, seen from the front: a ray at each station, outward where the inner arris stands prouder, as long as
 * the bevel is wide. Sides that are alike have the same bevels, so one half shows the back edge and the other the top edge. Where they differ
 * the outline stands twice: with the top edge of both sides, and beside it with the back edge.
 */
export function bevelsDrawing(computed: Computed): Drawing {
  const { isMirrored } = computed.geometry.outline
  const shapes = isMirrored
    ? [
        ...outlineShapes(computed),
        ...rays(computed, 'top', 'bass'),
        ...rays(computed, 'back', 'treble'),
        ...words(computed, 'topBevelBothSides', 'backBevelBothSides'),
      ]
    : bothEdges(computed)
  return {
    name: 'bevels',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { left: 'tail', right: 'neck', ...(isMirrored ? {} : { top: 'bass', bottom: 'treble' }) },
    shapes,
  }
}

function bothEdges(computed: Computed): Shape[] {
  const { lengthMm, bouts, outline } = computed.geometry
  const middle = curveAt(outline.bass, bouts.lowerBoutMm).point
  const apart = lengthMm + 2 * PAST_ENDS_MM + BETWEEN_MM
  return (['top', 'back'] as const).flatMap((edge, i) =>
    [
      ...outlineShapes(computed),
      ...rays(computed, edge, 'bass'),
      ...rays(computed, edge, 'treble'),
      label(edge === 'top' ? 'topBevel' : 'backBevel', { x: middle.x + 30, y: 0 }, { x: 0, y: -1 }),
    ].map((shape) => moved(shape, { x: i * apart, y: 0 })),
  )
}

function outlineShapes({ geometry }: Computed): Shape[] {
  const { bass, treble } = geometry.outline
  return [
    drawn('edge', curveCommands(treble)),
    drawn('edge', curveCommands(bass, { mirrored: true })),
    drawn(
      'centre',
      through([
        { x: -PAST_ENDS_MM, y: 0 },
        { x: geometry.lengthMm + PAST_ENDS_MM, y: 0 },
      ]),
    ),
  ]
}

interface Ray {
  readonly at: Point
  readonly end: Point
  readonly away: Point
}

/** The rays of one edge of one side. */
function rays({ numbers, geometry }: Computed, edge: 'top' | 'back', side: HalfName): Shape[] {
  const ownTreble = side === 'treble' && !geometry.outline.isMirrored
  const flip = side === 'treble' ? 1 : -1
  const key = edge === 'back' ? 'backBevelRad' : 'topBevelRad'
  const rayOn = (site: RimSite, s: number, bevelRad: number): Ray => {
    const { point, normal } = curveAt(site.half, s - site.startMm)
    const reach = Math.min(Math.max(degFromRad(bevelRad) * MM_PER_DEG, -LONGEST_MM), LONGEST_MM)
    const out = { x: normal.x, y: flip * normal.y }
    const at = { x: point.x, y: flip * point.y }
    return {
      at,
      end: { x: at.x + out.x * reach, y: at.y + out.y * reach },
      away: reach < 0 ? { x: -out.x, y: -out.y } : out,
    }
  }
  const siteAt = (s: number) =>
    ownTreble
      ? (geometry.trebleSites.find(({ startMm, half }) => s <= startMm + half.lengthMm + 1e-9) ??
        geometry.trebleSites.at(-1)!)
      : geometry.rimSite
  const siteOfRow = (row: number) =>
    ownTreble ? geometry.trebleSites[numbers.trebleRim[row]!.blank - 1]! : geometry.rimSite
  const last = (ownTreble ? numbers.trebleRim : numbers.rim).length - 1
  const list = ownTreble ? 'trebleRim' : 'rim'
  const placeList = ownTreble ? 'treblePlaces' : 'places'
  const places = numbers[placeList]
  const rows = (ownTreble ? trebleStationRows(numbers) : stationRows(numbers)).map(({ row, at }) => ({
    row,
    bevelRad: at[key],
    site: siteOfRow(row),
    ray: rayOn(siteOfRow(row), at.alongOuterMm, at[key]),
  }))
  const lines = rows.flatMap(({ ray: { at, end } }): PathCommand[] => [
    ['M', at.x, at.y],
    ['L', end.x, end.y],
  ])
  const figures = [
    ...places.map((row, i) => ({
      ray: rayOn(siteAt(row.alongOuterMm), row.alongOuterMm, row[key]),
      figure: figured(numbers, `${placeList}[].${key}`, i),
      // Two outlines side by side stand smaller: there even these give way.
      urgency: geometry.outline.isMirrored ? 0 : 1,
      isPlace: true,
      end: i === 0 || i === places.length - 1,
    })),
    ...rows.map(({ row, bevelRad, ray }) => ({
      ray,
      figure: figuredRow(`${list}[].${key}`, row, bevelRad),
      urgency: stationUrgency(row, last),
      isPlace: false,
      end: row === 0 || row === last,
    })),
  ]
  const sites = [...new Set(rows.map(({ site }) => site))]
  return [
    drawn('thin', lines),
    ...sites.map((site) => drawn('thin', through(rows.filter((row) => row.site === site).map(({ ray }) => ray.end)))),
    ...figures
      .filter(({ end, isPlace }) => isPlace || !end)
      .map(({ ray, figure, urgency, end }) =>
        ordinate(
          figure,
          ray.end,
          end && Math.abs(ray.at.y) < ON_CENTRELINE_MM ? { x: ray.away.x, y: flip * 0.75 } : ray.away,
          urgency,
        ),
      ),
  ]
}

function words({ geometry }: Computed, bass: Label['word'], treble: Label['word']): Shape[] {
  const middle = curveAt(geometry.outline.bass, geometry.bouts.lowerBoutMm).point
  return [
    label(bass, { x: middle.x + 30, y: -middle.y * 0.4 }, { x: 0, y: 0 }),
    label(treble, { x: middle.x + 30, y: middle.y * 0.4 }, { x: 0, y: 0 }),
  ]
}
