import type { Computed } from '../core/compute.ts'
import { curvatureOf } from '../core/figure.ts'
import { dropMm } from '../core/geometry/sagitta.ts'
import { shapesBounds } from './bounds.ts'
import { label, ordinate, outside } from './dimension.ts'
import type { Drawing, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { closed, drawn, through } from './line.ts'
import { curveThrough } from './smooth.ts'

/**
 * A block from above, with its glue face and the arc that fits it best, and beside it the same block from the treble side with its heights.
 * How far the face falls back is drawn `heightsTimes` larger than it is, or as much as the block's thickness leaves room for.
 */
export function blockDrawing({ numbers }: Computed, end: 'tail' | 'neck', heightsTimes = 1): Drawing {
  const block = numbers.blocks[end]
  // The glue face looks to the tail on the left, to the neck on the right.
  const inward = end === 'tail' ? 1 : -1
  const thick = Math.max(block.thicknessMm, 1)
  const rise = Math.abs(block.contourRiseMm)
  const room = rise > 0 ? Math.max(1, Math.floor((0.6 * thick) / rise)) : heightsTimes
  const times = Math.min(heightsTimes, room)
  const half = Math.max(block.contour.at(-1)?.acrossMm ?? 0, 0.5)
  const fall = (mm: number) => inward * times * mm
  const treble = block.contour.map((row) => ({ x: fall(row.fallsBackMm), y: row.acrossMm }))
  const face = [
    ...treble
      .slice(1)
      .map(({ x, y }) => ({ x, y: -y }))
      .reverse(),
    ...treble,
  ]
  const curvature = block.contourRadiusMm === 'none' ? 0 : curvatureOf(block.contourRadiusMm)
  const arc = Array.from({ length: 25 }, (_, i) => {
    const y = -half + (2 * half * i) / 24
    return { x: fall(dropMm(curvature, y)), y }
  })
  const insideX = inward * thick
  const edgeX = treble.at(-1)?.x ?? 0
  const fromAbove: Shape[] = [
    drawn('edge', [...curveThrough(face), ['L', insideX, half], ['L', insideX, -half], ['Z']]),
    drawn('ghost', curveThrough(arc)),
    drawn(
      'centre',
      through([
        { x: -inward * 8, y: 0 },
        { x: insideX + inward * 8, y: 0 },
      ]),
    ),
  ]
  // The two views stand side by side, far enough apart for the figures between them.
  const height = Math.max(block.heightAtFaceMm, block.heightInsideMm, 1)
  const apart = 0.75 * Math.max(2 * half, height) + thick
  const shift = end === 'tail' ? apart : -apart
  const faceX = shift
  const backX = shift + inward * thick
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
  const fromSide: Shape[] = [
    drawn('edge', closed(through([corner.faceTop, corner.insideTop, corner.insideBack, corner.faceBack]))),
    level(corner.faceTop.y),
    level(corner.faceBack.y),
  ]
  const shapes = [...fromAbove, ...fromSide]
  const bounds = shapesBounds(shapes)
  const above = shapesBounds(fromAbove)
  const beside = shapesBounds(fromSide)
  const key = <K extends string>(name: K) => `blocks.${end}.${name}` as const
  const n = numbers
  const faceSide = end === 'tail' ? 'left' : 'right'
  const insideSide = end === 'tail' ? 'right' : 'left'
  const baseOf = (box: typeof above, side: 'left' | 'right') => (side === 'left' ? box.minX : box.maxX)
  const middle = (faceX + backX) / 2
  return {
    name: end === 'tail' ? 'blockTail' : 'blockNeck',
    seenFrom: 'front',
    bounds,
    heightsTimes: times,
    marks: {},
    shapes: [
      ...shapes,
      outside(
        figured(n, key('widthMm')),
        insideSide,
        baseOf(above, insideSide),
        { x: insideX, y: -half },
        { x: insideX, y: half },
      ),
      outside(figured(n, key('thicknessMm')), 'above', above.minY, { x: 0, y: -half }, { x: insideX, y: -half }),
      outside(figured(n, key('contourRiseMm')), 'below', above.maxY, { x: 0, y: half }, { x: edgeX, y: half }),
      ordinate(
        { ...figured(n, key('contourRadiusMm')), ...(block.contourRadiusMm === 'flat' ? {} : { sign: 'R' as const }) },
        { x: -inward * 10, y: 0 },
        { x: -inward, y: 0 },
        0,
      ),
      outside(figured(n, key('heightAtFaceMm')), faceSide, baseOf(beside, faceSide), corner.faceTop, corner.faceBack),
      outside(
        figured(n, key('heightInsideMm')),
        insideSide,
        baseOf(beside, insideSide),
        corner.insideTop,
        corner.insideBack,
      ),
      ordinate(figured(n, key('topSlopeRad')), { x: middle, y: beside.minY }, { x: 0, y: -1 }, 0),
      ordinate(figured(n, key('backSlopeRad')), { x: middle, y: beside.maxY }, { x: 0, y: 1 }, 0),
      label('bass', { x: -inward * 4, y: -half * 0.9 }, { x: -inward, y: 0 }),
      label('treble', { x: -inward * 4, y: half * 0.9 }, { x: -inward, y: 0 }),
      label('glueFace', { x: -inward * 4, y: half * 0.45 }, { x: -inward, y: 0 }),
      label('contourFromAbove', { x: insideX / 2, y: bounds.maxY }, { x: 0, y: 7 }),
      label('blockFromSide', { x: middle, y: bounds.maxY }, { x: 0, y: 7 }),
    ],
  }
}
