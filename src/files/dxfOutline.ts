import { transformPath } from '../core/geometry/path.ts'
import type { DrawnFile, DrawnFileProblem, DrawnUnit, LeftOutKind } from '../record/drawnFile.ts'
import { type Result, refuse } from '../record/result.ts'
import { closeTo, gatherDrawing, MOST_DRAWN_BYTES } from './drawnPaths.ts'
import { type DxfShape, readArc, readEllipse, readLine, readPolyline, readSpline } from './dxfEntities.ts'
import { type DxfEntity, numberOf, readDxfGroups, readDxfNumber, textOf } from './dxfGroups.ts'

/** Values of the variable for the drawing's unit. Source: DXF reference, $INSUNITS. */
const UNITS: Readonly<Record<number, { readonly unit: DrawnUnit; readonly mm: number }>> = {
  1: { unit: 'inch', mm: 25.4 },
  2: { unit: 'foot', mm: 304.8 },
  4: { unit: 'mm', mm: 1 },
  5: { unit: 'cm', mm: 10 },
  6: { unit: 'm', mm: 1000 },
}

const LEFT_OUT: Readonly<Record<string, LeftOutKind>> = {
  TEXT: 'text',
  MTEXT: 'text',
  DIMENSION: 'text',
  LEADER: 'text',
  MULTILEADER: 'text',
  ATTDEF: 'text',
  IMAGE: 'picture',
  INSERT: 'reference',
}
/** Belong to others, or mark a page: nothing of theirs is missed. */
const SILENT: ReadonlySet<string> = new Set(['VIEWPORT', 'ATTRIB', 'VERTEX', 'SEQEND'])
/** How the binary form begins, after the name of a program. */
const BINARY = /^\S+ Binary DXF\r?\n/

/**
 * The lines drawn in the model space of a DXF text, as data: in mm where the file says its unit, in its own units otherwise. Lines, arcs,
 * circles, polylines with bulges and splines up to degree 3 exactly; ellipses, rational splines and those of higher degree within
 * 0.0005 mm. Whatever the text, a plain reason comes back where it cannot be read.
 */
export function readDxfOutline(text: string): Result<DrawnFile, DrawnFileProblem> {
  if (BINARY.test(text.slice(0, 40))) return refuse('binaryDxf')
  if (text.length > MOST_DRAWN_BYTES) return refuse('tooLarge')
  const contents = readDxfGroups(text.startsWith('\uFEFF') ? text.slice(1) : text)
  if (contents === null) return refuse('notDxf')
  const unit = UNITS[readDxfNumber(contents.header.get('$INSUNITS') ?? '')]
  const scale = unit?.mm ?? 1
  const close = closeTo(unit?.mm ?? null) / scale
  const gathering = gatherDrawing()
  for (const entity of contents.entities) {
    if (gathering.hasFailed()) break
    if (SILENT.has(entity.type) || numberOf(entity, 67, 0) === 1) continue
    const shape = numberOf(entity, 60, 0) === 1 ? ({ leftOut: 'hidden' } as const) : readEntity(entity, close)
    if ('problem' in shape) gathering.fail(shape.problem)
    else if ('leftOut' in shape) gathering.leaveOut(shape.leftOut)
    else gathering.add(textOf(entity, 8), transformPath(shape.path, { scale }), shape.isClosed)
  }
  const file = gathering.finish(unit?.unit ?? null)
  if (file.ok || file.problem !== 'nothingDrawn') return file
  if (gathering.countOf('fitSpline') > 0) return refuse('onlyFit')
  return gathering.countOf('reference') > 0 ? refuse('onlyBlocks') : file
}

function readEntity(entity: DxfEntity, close: number): DxfShape {
  switch (entity.type) {
    case 'LINE':
      return readLine(entity)
    case 'ARC':
    case 'CIRCLE':
      return readArc(entity, close)
    case 'ELLIPSE':
      return readEllipse(entity, close)
    case 'LWPOLYLINE':
    case 'POLYLINE':
      return readPolyline(entity)
    case 'SPLINE':
      return readSpline(entity, close)
    default:
      return { leftOut: Object.hasOwn(LEFT_OUT, entity.type) ? LEFT_OUT[entity.type]! : 'other' }
  }
}
