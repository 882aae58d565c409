import type { Computed } from '../core/compute.ts'
import { curvatureOf } from '../core/figure.ts'
import { dropMm } from '../core/geometry/sagitta.ts'
import type { BlockNumbers } from '../core/instrument/block.ts'
import { trebleContour, trebleFlank } from './blockFace.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label, ordinate, outside } from './dimension.ts'
import type { Bounds, Drawing, Shape } from './drawing.ts'
import { figured, figuredRow } from './figured.ts'
import { closed, drawn, through } from './line.ts'
import { curveThrough } from './smooth.ts'

type End = 'tail' | 'neck'
/** Lanes that the turned figures of a flank take beside a block. */
const FLANK_LANES = 2

/**
 * A block from above, with its glue face and the arc that fits it best, and beside it the same block from the side with its heights.
 * How far the face falls back is drawn `heightsTimes` larger than it is, or as much as the block's thickness leaves room for. Where a
 * cutaway's side comes in, what is cut off the block is dotted.
 */
export function blockDrawing({ numbers }: Computed, end: End, heightsTimes = 1): Drawing {
  const block = numbers.blocks[end]
  // The glue face looks to the tail on the left, to the neck on the right.
  const inward = end === 'tail' ? 1 : -1
  const thick = Math.max(block.thicknessMm, 1)
  const rise = Math.abs(block.contourRiseMm)
  const room = rise > 0 ? Math.max(1, Math.floor((0.6 * thick) / rise)) : heightsTimes
  const times = Math.min(heightsTimes, room)
  const above = seenFromAbove(block, inward, times)
  // The two views stand side by side, far enough apart for the figures between them.
  const height = Math.max(block.heightAtFaceMm, block.heightInsideMm, 1)
  const apart = 0.75 * Math.max(2 * above.halfMm, height) + thick
  const beside = seenFromSide(block, inward, inward * apart)
  const kept = (shape: Shape): Shape => ({ ...shape, isKept: true })
  const shapes = [...above.shapes, ...beside.shapes.map(kept)]
  const bounds = shapesBounds(shapes)
  return {
    name: end === 'tail' ? 'blockTail' : 'blockNeck',
    seenFrom: 'front',
    bounds,
    heightsTimes: times,
    marks: {},
    shapes: [
      ...shapes,
      ...figuresAbove(numbers, end, inward, above),
      ...figuresBeside(numbers, end, inward, beside).map(kept),
      kept(label('contourFromAbove', { x: (inward * thick) / 2, y: bounds.maxY }, { x: 0, y: 7 })),
      kept(label('blockFromSide', { x: beside.middleX, y: bounds.maxY }, { x: 0, y: 7 })),
    ],
  }
}

interface FromAbove {
  readonly shapes: readonly Shape[]
  readonly halfMm: number
  readonly insideX: number
  /** Where the glue face ends at half the block's width. */
  readonly edgeX: number
  readonly flank: readonly { readonly x: number; readonly y: number; readonly row: number }[]
}

function seenFromAbove(block: BlockNumbers, inward: 1 | -1, times: number): FromAbove {
  const halfMm = Math.max(block.contour.at(-1)?.acrossMm ?? 0, 0.5)
  const insideX = inward * Math.max(block.thicknessMm, 1)
  const fall = (mm: number) => inward * times * mm
  const faceOf = (rows: BlockNumbers['contour']) => rows.map((row) => ({ x: fall(row.fallsBackMm), y: row.acrossMm }))
  const whole = faceOf(block.contour)
  const edgeX = whole.at(-1)?.x ?? 0
  const bass = whole.slice(1).map(({ x, y }) => ({ x, y: -y }))
  const treble = faceOf(trebleContour(block))
  const corner = treble.at(-1)
  const isCut = block.trebleReachMm < halfMm
  const flank = isCut
    ? trebleFlank(block, Math.abs(corner?.x ?? 0)).map(({ fromFaceMm, acrossMm }) => ({
        x: inward * fromFaceMm,
        y: acrossMm,
      }))
    : [{ x: insideX, y: halfMm }]
  const curvature = block.contourRadiusMm === 'none' ? 0 : curvatureOf(block.contourRadiusMm)
  const arc = Array.from({ length: 25 }, (_, i) => {
    const y = -halfMm + (2 * halfMm * i) / 24
    return { x: fall(dropMm(curvature, y)), y }
  })
  const shapes: Shape[] = [
    drawn('edge', [
      ...curveThrough([...bass.reverse(), ...treble]),
      ...flank.map(({ x, y }) => ['L', x, y] as const),
      ['L', insideX, -halfMm],
      ['Z'],
    ]),
    drawn('ghost', curveThrough(arc)),
    ...(isCut ? [drawn('ghost', through([{ x: edgeX, y: halfMm }, { x: insideX, y: halfMm }, flank.at(-1)!]))] : []),
    drawn(
      'centre',
      through([
        { x: -inward * 8, y: 0 },
        { x: insideX + inward * 8, y: 0 },
      ]),
    ),
  ]
  return {
    shapes,
    halfMm,
    insideX,
    edgeX,
    flank: isCut
      ? block.flank.map(({ fromFaceMm, acrossMm }, row) => ({ x: inward * fromFaceMm, y: acrossMm, row }))
      : [],
  }
}

function figuresAbove(n: Computed['numbers'], end: End, inward: 1 | -1, above: FromAbove): Shape[] {
  const { halfMm, insideX, edgeX, flank } = above
  const block = n.blocks[end]
  const box = shapesBounds(above.shapes)
  const key = keyOf(end)
  const insideSide = end === 'tail' ? 'right' : 'left'
  const last = flank.length - 1
  const cutFigures = flank.map(({ x, row, y }) =>
    ordinate(
      figuredRow(`blocks.${end}.flank[].acrossMm`, row, y),
      { x, y: box.maxY },
      { x: 0, y: 1 },
      row === 0 || row === last ? 0 : 1,
      true,
    ),
  )
  const first = flank[0]
  return [
    outside(
      figured(n, key('widthMm')),
      insideSide,
      baseOf(box, insideSide),
      { x: insideX, y: -halfMm },
      { x: insideX, y: halfMm },
    ),
    outside(figured(n, key('thicknessMm')), 'above', box.minY, { x: 0, y: -halfMm }, { x: insideX, y: -halfMm }),
    outside(
      figured(n, key('contourRiseMm')),
      'below',
      box.maxY,
      { x: 0, y: halfMm },
      { x: edgeX, y: halfMm },
      flank.length > 0 ? FLANK_LANES : 0,
    ),
    ...(first === undefined
      ? []
      : [inPlace(figured(n, key('trebleReachMm')), 'left', { x: 0, y: 0 }, { x: 0, y: block.trebleReachMm }, 0.5)]),
    ...cutFigures,
    ordinate(
      { ...figured(n, key('contourRadiusMm')), ...(block.contourRadiusMm === 'flat' ? {} : { sign: 'R' as const }) },
      { x: -inward * 10, y: 0 },
      { x: -inward, y: 0 },
      0,
    ),
    label('bass', { x: -inward * 4, y: -halfMm * 0.9 }, { x: -inward, y: 0 }),
    label('treble', { x: -inward * 4, y: halfMm * 0.9 }, { x: -inward, y: 0 }),
    label('glueFace', { x: -inward * 4, y: halfMm * 0.45 }, { x: -inward, y: 0 }),
  ]
}

interface FromSide {
  readonly shapes: readonly Shape[]
  readonly middleX: number
  readonly corner: Record<'faceTop' | 'insideTop' | 'insideBack' | 'faceBack', { x: number; y: number }>
}

function seenFromSide(block: BlockNumbers, inward: 1 | -1, faceX: number): FromSide {
  const thick = Math.max(block.thicknessMm, 1)
  const backX = faceX + inward * thick
  const topIn = -Math.tan(block.topSlopeRad) * thick
  const middleY = -block.heightAtFaceMm / 2
  const corner = {
    faceTop: { x: faceX, y: middleY },
    insideTop: { x: backX, y: middleY + topIn },
    insideBack: { x: backX, y: middleY + topIn + block.heightInsideMm },
    faceBack: { x: faceX, y: middleY + block.heightAtFaceMm },
  }
  const level = (y: number): Shape =>
    drawn(
      'thin',
      through([
        { x: faceX, y },
        { x: backX, y },
      ]),
    )
  return {
    shapes: [
      drawn('edge', closed(through([corner.faceTop, corner.insideTop, corner.insideBack, corner.faceBack]))),
      level(corner.faceTop.y),
      level(corner.faceBack.y),
    ],
    middleX: (faceX + backX) / 2,
    corner,
  }
}

function figuresBeside(n: Computed['numbers'], end: End, inward: 1 | -1, beside: FromSide): Shape[] {
  const { corner, middleX } = beside
  const box = shapesBounds(beside.shapes)
  const key = keyOf(end)
  const faceSide = inward === 1 ? 'left' : 'right'
  const insideSide = inward === 1 ? 'right' : 'left'
  return [
    outside(figured(n, key('heightAtFaceMm')), faceSide, baseOf(box, faceSide), corner.faceTop, corner.faceBack),
    outside(
      figured(n, key('heightInsideMm')),
      insideSide,
      baseOf(box, insideSide),
      corner.insideTop,
      corner.insideBack,
    ),
    ordinate(figured(n, key('topSlopeRad')), { x: middleX, y: box.minY }, { x: 0, y: -1 }, 0),
    ordinate(figured(n, key('backSlopeRad')), { x: middleX, y: box.maxY }, { x: 0, y: 1 }, 0),
  ]
}

const keyOf =
  (end: End) =>
  <K extends string>(name: K) =>
    `blocks.${end}.${name}` as const
const baseOf = (box: Bounds, side: 'left' | 'right') => (side === 'left' ? box.minX : box.maxX)
