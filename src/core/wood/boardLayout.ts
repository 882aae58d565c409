import { fitsIn, liesOf, type Run, usableFace } from './layoutRun.ts'
import { bestRun } from './layoutSearch.ts'
import { type CutPart, volumeMm3 } from './part.ts'
import type { LayoutPart, LayoutRules, Placement, StockBoard } from './placement.ts'
import type { Rect, SawCut } from './sawing.ts'
import { slicesFrom } from './stock.ts'

/** What is left, of the board's thickness, or of less over a place that was resawn. */
export interface Offcut extends Rect {
  readonly thicknessMm: number
}

export interface SawnBoard {
  readonly boardId: string
  readonly placements: readonly Placement[]
  /** In the order they are made, after the edges are trimmed; resawing is not among them. */
  readonly cuts: readonly SawCut[]
  readonly offcuts: readonly Offcut[]
  /** Board = parts + offcuts + lost, the last to kerf and trim; a board that nothing is laid on is one offcut, untrimmed. */
  readonly partsMm3: number
  readonly offcutsMm3: number
  readonly lostMm3: number
}

/**
 * tooThick   no board gives a slice, or a bookmatched pair, of that thickness
 * tooLong    of those that do, none is long enough along the grain
 * tooWide    of those, none is wide enough
 * noRoom     it would fit a board that has nothing else on it
 * tooMany    more pieces than are laid out at a time
 * noSize     a measure is not over 0, or not finite
 */
export const UNPLACED_REASONS = ['tooThick', 'tooLong', 'tooWide', 'noRoom', 'tooMany', 'noSize'] as const
export interface Unplaced {
  readonly partId: string
  readonly quantity: number
  readonly reason: (typeof UNPLACED_REASONS)[number]
}

export interface BoardLayout {
  readonly boards: readonly SawnBoard[]
  readonly unplaced: readonly Unplaced[]
}

/** A row of the cut list as it is laid out. */
export const layoutPart = ({ id, rough, grain, quantity, isBookmatched }: CutPart): LayoutPart => ({
  id,
  size: rough,
  grain,
  quantity,
  isBookmatched,
})

const MOST_PIECES = 400
const MOST_BOARDS = 60
/**
 * Lays rectangular parts on boards, so that every one can be sawn out by straight cuts right through the piece on the saw, with a kerf between
 * any two. The best of a fixed list of greedy strategies: most volume placed, then the least volume of boards sawn into, then the largest single offcut;
 * of equals the first. A rule of thumb that gives the same layout everywhere; it does not promise the best there is. Every part is placed or
 * among the unplaced, none twice. A kerf or trim under 0 counts as none. Source: guillotine cutting by free rectangles, common practice.
 */
export function layOutBoards(
  parts: readonly LayoutPart[],
  boards: readonly StockBoard[],
  { kerfMm, trimMm }: LayoutRules,
): BoardLayout {
  const rules = { kerfMm: Math.max(kerfMm, 0), trimMm: Math.max(trimMm, 0) }
  const unplaced: Unplaced[] = []
  const laid: LayoutPart[] = []
  let room = MOST_PIECES
  for (const part of parts) {
    const quantity = Math.max(Math.floor(part.quantity), 0)
    const reason = whyNever(part, boards, rules)
    const taken = reason === null ? Math.min(quantity, room) : 0
    room -= taken
    if (taken > 0) laid.push({ ...part, quantity: taken })
    if (taken < quantity) unplaced.push({ partId: part.id, quantity: quantity - taken, reason: reason ?? 'tooMany' })
  }
  const best = bestRun(laid, boards.slice(0, MOST_BOARDS), rules)
  laid.forEach((part, i) => {
    const left = best.left[i]!
    if (left > 0) unplaced.push({ partId: part.id, quantity: left, reason: 'noRoom' })
  })
  const untouched = boards.slice(MOST_BOARDS).map((board) => ({ board, pieces: [], placements: [], cuts: [] }))
  return { boards: [...best.boards, ...untouched].map((one) => finish(one, rules.kerfMm)), unplaced }
}

/** Why a part goes on none of the boards even alone; null where it goes on one. */
function whyNever(part: LayoutPart, boards: readonly StockBoard[], rules: LayoutRules): Unplaced['reason'] | null {
  const { lengthMm, widthMm, thicknessMm } = part.size
  if (![lengthMm, widthMm, thicknessMm].every((mm) => mm > 0 && Number.isFinite(mm))) return 'noSize'
  const thick = boards
    .slice(0, MOST_BOARDS)
    .filter((board) => slicesFrom(board.thicknessMm, thicknessMm, rules.kerfMm, part.isBookmatched) > 0)
  if (thick.length === 0) return 'tooThick'
  const faces = thick.flatMap((board) => usableFace(board, rules.trimMm) ?? [])
  const lies = liesOf(part)
  if (faces.some((face) => lies.some((lie) => fitsIn(lie, face)))) return null
  const isLongEnough = faces.some((face) =>
    lies.some((lie) => fitsIn(lie, { lengthMm: face.lengthMm, widthMm: Number.POSITIVE_INFINITY })),
  )
  return isLongEnough ? 'tooWide' : 'tooLong'
}

/** A board as it comes off the saw: what is left over resawn places counts as an offcut too. */
function finish({ board, pieces, placements, cuts }: Run['boards'][number], kerfMm: number): SawnBoard {
  const { thicknessMm } = board
  const whole = Math.max(volumeMm3(board), 0)
  const slabs = placements.flatMap(({ xMm, yMm, lengthMm, widthMm, ...one }) => {
    const leftMm = thicknessMm - one.copies * (one.thicknessMm + kerfMm)
    return leftMm > 1e-6 ? [{ xMm, yMm, lengthMm, widthMm, thicknessMm: leftMm }] : []
  })
  const offcuts =
    placements.length === 0
      ? whole > 0
        ? [{ xMm: 0, yMm: 0, lengthMm: board.lengthMm, widthMm: board.widthMm, thicknessMm }]
        : []
      : [...pieces.map((piece) => ({ ...piece, thicknessMm })), ...slabs]
  const partsMm3 = placements.reduce((sum, one) => sum + volumeMm3(one) * one.copies, 0)
  const offcutsMm3 = offcuts.reduce((sum, one) => sum + volumeMm3(one), 0)
  return {
    boardId: board.id,
    placements,
    cuts,
    offcuts,
    partsMm3,
    offcutsMm3,
    lostMm3: Math.max(whole - partsMm3 - offcutsMm3, 0),
  }
}
