import {
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  SplineFlags,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf'
import type { Point } from '../../core/geometry/point.ts'
import type { Lettering, Plot, Stroke } from '../../drawing/plot.ts'
import { svgNumber } from '../../drawing/svgPath.ts'
import { FILE_LAYERS, LAYER_COLOURS } from '../plotLayers.ts'
import { dxfText } from './dxfText.ts'
import { type DxfCurves, type DxfShape, dxfShapes, up } from './dxfShapes.ts'

export interface DxfChoice {
  readonly curves: 'splines' | 'polylines'
  /** How far polylines may depart from the curve they stand for; of no account with splines. From 0.01. */
  readonly toleranceMm: number
}

/** What a drawn path may itself depart from the curve of the core. */
const DRAWN_WITHIN_MM = 0.005
const WHO = 'Ribwright'
const METRIC = 1

/**
 * A plot as a DXF of 2007 in millimetres, y up, with the plot's own origin. Layers CUT, SCORE, MARK and TEXT. Lines are LINE, or LWPOLYLINE
 * where several run on from each other; arcs ARC and CIRCLE; cubics one SPLINE each, or straight lines within the tolerance: from the
 * curve of the instrument from 0.01 mm on, from the drawn path below that.
 */
export function writePlotDxf(plot: Plot, { curves, toleranceMm }: DxfChoice): string {
  const dxf = new DxfWriter()
  dxf.setUnits(Units.Millimeters)
  dxf.setVariable('$MEASUREMENT', { 70: METRIC })
  dxf.setVariable('$LASTSAVEDBY', { 1: WHO })
  for (const layer of FILE_LAYERS) dxf.addLayer(layer.toUpperCase(), LAYER_COLOURS[layer].index)
  const lineTypes = addLineTypes(dxf, plot.strokes)
  const way: DxfCurves =
    curves === 'splines'
      ? { kind: 'splines' }
      : { kind: 'polylines', closeMm: Math.max(toleranceMm - DRAWN_WITHIN_MM, toleranceMm / 2) }
  for (const stroke of plot.strokes) {
    const lineType = lineTypes.get(dashKey(stroke))
    const options = { layerName: stroke.layer.toUpperCase(), ...(lineType === undefined ? {} : { lineType }) }
    for (const shape of dxfShapes(stroke.commands, way)) addShape(dxf, shape, options)
  }
  for (const lettering of plot.letterings) addText(dxf, lettering)
  return `${dxf.stringify()}\n`
}

interface Options {
  readonly layerName: string
  readonly lineType?: string
}

function addShape(dxf: DxfWriter, shape: DxfShape, options: Options): void {
  switch (shape.kind) {
    case 'run': {
      const [from, to] = shape.points
      if (shape.points.length === 2 && from !== undefined && to !== undefined) {
        dxf.addLine(place(from), place(to), options)
        return
      }
      dxf.addLWPolyline(
        shape.points.map(({ x, y }) => ({ point: point2d(length(x), length(y)) })),
        { ...options, flags: shape.isClosed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      )
      return
    }
    case 'arc':
      dxf.addArc(place(shape.centre), length(shape.radiusMm), angle(shape.fromDeg), angle(shape.toDeg), options)
      return
    case 'circle':
      dxf.addCircle(place(shape.centre), length(shape.radiusMm), options)
      return
    case 'cubic':
      dxf.addSpline(
        {
          controlPoints: shape.cubic.map(place),
          degreeCurve: 3,
          flags: SplineFlags.Planar,
          knots: [0, 0, 0, 0, 1, 1, 1, 1],
        },
        options,
      )
  }
}

function addText(dxf: DxfWriter, { text, at, heightMm, turnDeg }: Lettering): void {
  if (text.trim() === '') return
  const middle = place(up(at.x, at.y))
  dxf.addText(middle, length(heightMm), dxfText(text), {
    layerName: 'TEXT',
    rotation: turnDeg === 0 ? 0 : -turnDeg,
    horizontalAlignment: TextHorizontalAlignment.Center,
    verticalAlignment: TextVerticalAlignment.Middle,
    secondAlignmentPoint: middle,
  })
}

const dashKey = ({ layer, dashesMm }: Stroke): string => (layer === 'cut' ? '' : dashesMm.map(length).join(' '))

/** A line type for every way of dashing; what is cut through is drawn through, since a dash would be a bridge. */
function addLineTypes(dxf: DxfWriter, strokes: readonly Stroke[]): ReadonlyMap<string, string> {
  const names = new Map<string, string>()
  for (const stroke of strokes) {
    const key = dashKey(stroke)
    if (key === '' || names.has(key)) continue
    const name = `DASHES${names.size + 1}`
    // A gap is written as a length below nothing.
    const elements = stroke.dashesMm.map((part, i) => length(i % 2 === 0 ? part : -part))
    dxf.addLType(name, key, elements)
    names.set(key, name)
  }
  return names
}

/** To a millionth of a millimetre, so that no figure is written with an exponent. */
const length = (mm: number): number => svgNumber(mm, 6)
const place = ({ x, y }: Point) => point3d(length(x), length(y))
/** Finer, for an arc of a long radius; nothing so small that it would be written with an exponent. */
const angle = (deg: number): number => (Math.abs(deg) < 1e-6 ? 0 : svgNumber(deg, 9))
