import type { Computed } from '../../core/compute.ts'
import { insetPoint } from '../../core/geometry/curve.ts'
import { findRoot } from '../../core/geometry/root.ts'
import { shapesBounds } from '../bounds.ts'
import { changeCommand } from '../changeShape.ts'
import { curveCommands } from '../curvePath.ts'
import { label, ordinate, outside } from '../dimension.ts'
import type { Drawing, PathCommand, Shape } from '../drawing.ts'
import { figured, figuredAcross, figuredRow } from '../figured.ts'
import { drawn, rectangle, through } from '../line.ts'
import { shiftBy } from '../moved.ts'
import { reversedPath } from './reversedPath.ts'

/** How far the boards go on beside the block, and how wide each is at the least. */
const BESIDE_MM = 20
const LEAST_MM = 34
const TICK_MM = 2.5

/**
 * Two boards for the glue face of one block, seen from the front. One line, the inner face of the sides, parts the convex board, to which the
 * block is shaped, from the hollow one, which checks it. Centreline, ends of the block, and how far the face falls back at every row of its
 * contour. Where a cutaway comes in, a line shows how far the face reaches to the treble side.
 */
export function contourBoard(computed: Computed, end: 'tail' | 'neck'): Drawing {
  const { numbers } = computed
  const block = numbers.blocks[end]
  const inward = end === 'tail' ? 1 : -1
  const halfMm = block.contour.at(-1)?.acrossMm ?? 0
  const boardHalfMm = block.widthMm / 2 + BESIDE_MM
  const { commands, fallMm } = faceLine(computed, end, boardHalfMm)
  const hollowX = -inward * (LEAST_MM + Math.max(-fallMm, 0))
  const blockX = inward * (LEAST_MM + Math.max(fallMm, 0))
  const across = (role: 'hidden' | 'thin', y: number) =>
    drawn(
      role,
      through([
        { x: hollowX, y },
        { x: blockX, y },
      ]),
    )
  const isCut = block.trebleReachMm < halfMm - 1e-6
  const shapes: Shape[] = [
    drawn('edge', rectangle(Math.min(hollowX, blockX), -boardHalfMm, Math.max(hollowX, blockX), boardHalfMm)),
    across('hidden', -halfMm),
    across('hidden', halfMm),
    ...(isCut ? [across('thin', block.trebleReachMm)] : []),
    drawn(
      'centre',
      through([
        { x: hollowX, y: 0 },
        { x: blockX, y: 0 },
      ]),
    ),
    ...block.contour.flatMap(({ acrossMm, fallsBackMm }) =>
      (acrossMm === 0 ? [0] : [-acrossMm, acrossMm]).map((y) =>
        drawn(
          'thin',
          through([
            { x: inward * fallsBackMm - TICK_MM, y },
            { x: inward * fallsBackMm + TICK_MM, y },
          ]),
        ),
      ),
    ),
    drawn('cut', commands),
  ]
  const nameY = -(halfMm + boardHalfMm) / 2
  return {
    name: 'contourBoard',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble' },
    shapes: [
      ...shapes,
      ...contourFigures(computed, end, inward),
      ...(2 * halfMm < block.widthMm - 1e-6
        ? []
        : [
            outside(
              figured(numbers, `blocks.${end}.widthMm`),
              inward > 0 ? 'left' : 'right',
              hollowX,
              { x: hollowX, y: -halfMm },
              { x: hollowX, y: halfMm },
            ),
          ]),
      label('forBlock', { x: blockX / 2 + (inward * Math.max(fallMm, 0)) / 2, y: nameY }, { x: 0, y: 0 }),
      label('checksBlock', { x: hollowX / 2, y: nameY }, { x: 0, y: 0 }),
    ],
  }
}

/** Every row of the contour on the treble half: how far it falls back on the convex board, how far across it lies on the hollow one. */
function contourFigures({ numbers }: Computed, end: 'tail' | 'neck', inward: 1 | -1): Shape[] {
  const { contour, contourRadiusMm } = numbers.blocks[end]
  const last = contour.length - 1
  const key = `blocks.${end}` as const
  return [
    ...contour.flatMap(({ acrossMm, fallsBackMm }, row): Shape[] => {
      const urgency = row === last ? 1 : row % 2 === 0 ? 2 : 3
      const at = (way: 1 | -1) => ({ x: inward * (fallsBackMm + way * TICK_MM), y: acrossMm })
      return row === 0
        ? []
        : [
            ordinate(figuredRow(`${key}.contour[].fallsBackMm`, row, fallsBackMm), at(1), { x: inward, y: 0 }, urgency),
            ordinate(figuredAcross(`${key}.contour[].acrossMm`, row, acrossMm), at(-1), { x: -inward, y: 0 }, urgency),
          ]
    }),
    ordinate(
      { ...figured(numbers, `${key}.contourRadiusMm`), ...(contourRadiusMm === 'flat' ? {} : { sign: 'R' as const }) },
      { x: inward * TICK_MM, y: -8 },
      { x: inward, y: 0 },
      0,
    ),
  ]
}

/** The inner face near one end is followed to a third of the half at most: further out it is no end any more. */
const STEPS = 60

/**
 * The inner face from one edge of the boards to the other, its middle at x = 0, and how far it falls back there. Where the body is narrower than
 * the boards it goes on straight across.
 */
function faceLine(
  { geometry }: Computed,
  end: 'tail' | 'neck',
  boardHalfMm: number,
): { readonly commands: readonly PathCommand[]; readonly fallMm: number } {
  const { bass } = geometry.outline
  const insetMm = geometry.rimSite.sideThicknessMm
  const place = (u: number) => insetPoint(bass, end === 'tail' ? u : bass.lengthMm - u, insetMm)
  const stepMm = bass.lengthMm / (3 * STEPS)
  let endU = 0
  for (let i = 1; i <= STEPS && place(endU).y < boardHalfMm && place(i * stepMm).y > place(endU).y; i++)
    endU = i * stepMm
  const isReached = place(endU).y >= boardHalfMm
  if (isReached) endU = findRoot((u) => place(u).y - boardHalfMm, 0, endU, 1e-10)
  const stretch = end === 'tail' ? { toMm: endU } : { fromMm: bass.lengthMm - endU }
  const middle = place(0)
  const commands = [false, true].map((mirrored) => {
    const own = curveCommands(bass, { ...stretch, insetMm, mirrored })
    const outward = end === 'tail' ? own : reversedPath(own)
    const x = place(endU).x
    return isReached ? outward : [...outward, ['L', x, mirrored ? -boardHalfMm : boardHalfMm] as const]
  })
  const [treble, bassSide] = commands as [PathCommand[], PathCommand[]]
  const move = shiftBy({ x: -middle.x, y: 0 })
  return {
    commands: [...reversedPath(bassSide), ...treble.slice(1)].map((command) => changeCommand(command, move)),
    fallMm: (end === 'tail' ? 1 : -1) * (place(endU).x - middle.x),
  }
}
