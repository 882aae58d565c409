import type { Computed } from '../core/compute.ts'
import { curveAt, insetPoint } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import type { RimSite } from '../core/instrument/rim.ts'
import type { Shape } from './drawing.ts'
import { stationUrgency } from './dimension.ts'
import { type StationRow, stationRows, trebleStationRows } from './stationRows.ts'

const TICK_MM = 6

/**
 * The stations round the body, as ticks inward from the outer face, without those under the board: numbered on the treble side, with ticks on
 * both where they are alike; else each side has its own.
 */
export function planStations(computed: Computed): Shape[] {
  const { numbers, geometry } = computed
  const { isMirrored } = geometry.outline
  const bass = stationRows(numbers)
  if (isMirrored) return stationsOn(computed, bass, () => geometry.rimSite, 'both')
  const treble = trebleStationRows(numbers)
  return [
    ...stationsOn(computed, bass, () => geometry.rimSite, 'bass'),
    ...stationsOn(computed, treble, ({ row }) => geometry.trebleSites[numbers.trebleRim[row]!.blank - 1]!, 'treble'),
  ]
}

function stationsOn(
  { numbers, geometry }: Computed,
  rows: readonly StationRow[],
  siteOf: (row: StationRow) => RimSite,
  on: 'both' | 'bass' | 'treble',
): Shape[] {
  const last = (on === 'treble' ? numbers.trebleRim : numbers.rim).length - 1
  const bassPoint = ({ x, y }: Point): Point => ({ x, y: -y })
  return rows.flatMap((station): Shape[] => {
    const { list, at, row } = station
    if (at.xMm > numbers.scale.boardEndMm && at.xMm > geometry.lengthMm / 2 && at.yMm < geometry.boardEnd.halfWidthMm)
      return []
    const site = siteOf(station)
    const s = at.alongOuterMm - site.startMm
    const to = insetPoint(site.half, s, TICK_MM)
    const { normal } = curveAt(site.half, s)
    const from = { x: at.xMm, y: at.yMm }
    const treble = { from, to }
    const bass = { from: bassPoint(from), to: bassPoint(to) }
    return [
      {
        kind: 'station',
        list,
        row,
        ticks: on === 'both' ? [treble, bass] : [on === 'bass' ? bass : treble],
        numberAt: on === 'bass' ? bass.from : from,
        away: on === 'bass' ? bassPoint(normal) : normal,
        urgency: row % 5 === 0 ? stationUrgency(row, last) : 9,
      },
    ]
  })
}
