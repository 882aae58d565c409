import type { LayoutPart, LayoutRules, Placement, StockBoard } from './placement.ts'
import { type Rect, SAME_MM, type SawCut, sawCorner } from './sawing.ts'
import { slicesFrom } from './stock.ts'

/** Which piece left on the boards a part is sawn from: where least is left over, of its area, its closer side or its farther one. */
export const FITS = ['leastArea', 'closestSide', 'leastFarSide'] as const
/** Which cut comes first: always the one, or that which leaves the larger single piece, or the more even two. */
export const CUT_ORDERS = ['rip', 'crosscut', 'largestLeft', 'evenLeft'] as const

export interface Strategy {
  /** Indexes of the boards, the first to be used first. */
  readonly boardOrder: readonly number[]
  /** Indexes of the parts; one is placed until none of it is left or it does not fit any more, unless it stands here again. */
  readonly partOrder: readonly number[]
  readonly isOneByOne: boolean
  readonly fit: (typeof FITS)[number]
  readonly cutOrder: (typeof CUT_ORDERS)[number]
}

export interface OpenBoard {
  readonly board: StockBoard
  pieces: readonly Rect[]
  readonly placements: Placement[]
  readonly cuts: SawCut[]
}

export interface Run {
  readonly boards: readonly OpenBoard[]
  /** How many of each part are left. */
  readonly left: readonly number[]
}

/** Whether a board has a face to lay anything on once its edges are trimmed; null where not. */
export function usableFace(board: StockBoard, trimMm: number): Rect | null {
  const face = {
    xMm: trimMm,
    yMm: trimMm,
    lengthMm: board.lengthMm - 2 * trimMm,
    widthMm: board.widthMm - 2 * trimMm,
  }
  return face.lengthMm > SAME_MM && face.widthMm > SAME_MM && board.thicknessMm > 0 ? face : null
}

export interface Lie {
  readonly lengthMm: number
  readonly widthMm: number
  readonly isTurned: boolean
}

/** The ways a part may lie on a board, its grain along the board's. */
export function liesOf({ size: { lengthMm, widthMm }, grain }: LayoutPart): readonly Lie[] {
  const along = { lengthMm, widthMm, isTurned: false }
  const across = { lengthMm: widthMm, widthMm: lengthMm, isTurned: true }
  return grain === 'alongLength' ? [along] : grain === 'acrossLength' ? [across] : [along, across]
}

export const fitsIn = (
  lie: Lie,
  { lengthMm, widthMm }: { readonly lengthMm: number; readonly widthMm: number },
): boolean => lie.lengthMm <= lengthMm + SAME_MM && lie.widthMm <= widthMm + SAME_MM

/** Lays parts out by one strategy: greedily, board by board. */
export function layOutBy(
  strategy: Strategy,
  parts: readonly LayoutPart[],
  boards: readonly StockBoard[],
  rules: LayoutRules,
): Run {
  const open = boards.map((board): OpenBoard => {
    const face = usableFace(board, rules.trimMm)
    return { board, pieces: face === null ? [] : [face], placements: [], cuts: [] }
  })
  const left = parts.map(({ quantity }) => quantity)
  for (const index of strategy.partOrder) {
    const part = parts[index]!
    while (left[index]! > 0) {
      const placed = placeOne(strategy, part, left[index]!, open, rules.kerfMm)
      left[index]! -= placed
      if (placed === 0 || strategy.isOneByOne) break
    }
  }
  return { boards: open, left }
}

/** Places as many of a part as one place on a board gives; none where none fits. */
function placeOne(
  { boardOrder, fit, cutOrder }: Strategy,
  part: LayoutPart,
  wanted: number,
  open: readonly OpenBoard[],
  kerfMm: number,
): number {
  for (const index of boardOrder) {
    const target = open[index]!
    const slices = slicesFrom(target.board.thicknessMm, part.size.thicknessMm, kerfMm, part.isBookmatched)
    if (slices === 0) continue
    const found = bestPiece(target.pieces, liesOf(part), fit)
    if (found === null) continue
    const { piece, lie } = found
    const sawn = sawCorner(piece, lie, firstCut(piece, lie, cutOrder), kerfMm)
    target.pieces = [...target.pieces.filter((one) => one !== piece), ...sawn.left]
    target.cuts.push(...sawn.cuts)
    const copies = Math.min(slices, wanted)
    target.placements.push({
      ...sawn.taken,
      partId: part.id,
      thicknessMm: part.size.thicknessMm,
      copies,
      isTurned: lie.isTurned,
    })
    return copies
  }
  return 0
}

function bestPiece(
  pieces: readonly Rect[],
  lies: readonly Lie[],
  fit: Strategy['fit'],
): { readonly piece: Rect; readonly lie: Lie } | null {
  let best: { readonly piece: Rect; readonly lie: Lie; readonly overMm: number } | null = null
  for (const piece of pieces)
    for (const lie of lies) {
      if (!fitsIn(lie, piece)) continue
      const alongMm = piece.lengthMm - lie.lengthMm
      const acrossMm = piece.widthMm - lie.widthMm
      const overMm =
        fit === 'leastArea'
          ? piece.lengthMm * piece.widthMm - lie.lengthMm * lie.widthMm
          : fit === 'closestSide'
            ? Math.min(alongMm, acrossMm)
            : Math.max(alongMm, acrossMm)
      if (best === null || overMm < best.overMm - SAME_MM) best = { piece, lie, overMm }
    }
  return best
}

function firstCut(piece: Rect, lie: Lie, order: Strategy['cutOrder']): SawCut['way'] {
  if (order === 'rip' || order === 'crosscut') return order
  const overLengthMm = piece.lengthMm - lie.lengthMm
  const overWidthMm = piece.widthMm - lie.widthMm
  // Ripped first, the piece beside it keeps its whole length; crosscut first, the piece beyond it keeps its whole width.
  const ripped = Math.max(piece.lengthMm * overWidthMm, overLengthMm * lie.widthMm)
  const crosscut = Math.max(overLengthMm * piece.widthMm, overWidthMm * lie.lengthMm)
  return (order === 'largestLeft') === ripped >= crosscut ? 'rip' : 'crosscut'
}
