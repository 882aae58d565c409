import { expect } from 'vitest'
import type { BoardLayout, SawnBoard } from '../../../src/core/wood/boardLayout.ts'
import type { LayoutPart, LayoutRules, StockBoard } from '../../../src/core/wood/placement.ts'

/** A rectangle by its corners. */
interface Box {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}
interface Laid {
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly widthMm: number
}

const NEAR = 1e-6
const boxOf = ({ xMm, yMm, lengthMm, widthMm }: Laid): Box => ({
  x0: xMm,
  y0: yMm,
  x1: xMm + lengthMm,
  y1: yMm + widthMm,
})
const text = (boxes: readonly Box[]): string[] =>
  boxes.map((box) => [box.x0, box.y0, box.x1, box.y1].map((mm) => (mm + 1e-9).toFixed(4)).join(' ')).sort()

/** Whether straight cuts right through, a kerf wide, part the boxes one from another: every place of a first cut is tried. */
export function canBeSawn(boxes: readonly Box[], kerfMm: number): boolean {
  if (boxes.length <= 1) return true
  for (const [low, high] of [
    ['x0', 'x1'],
    ['y0', 'y1'],
  ] as const)
    for (const { [high]: place } of boxes) {
      const before = boxes.filter((box) => box[high] <= place + NEAR)
      const after = boxes.filter((box) => box[low] >= place + kerfMm - NEAR)
      if (after.length === 0 || before.length + after.length < boxes.length) continue
      if (canBeSawn(before, kerfMm) && canBeSawn(after, kerfMm)) return true
    }
  return false
}

/** The cuts made one after the other on what is left of the board: each has to go right through one piece. */
function sawByCuts({ cuts }: SawnBoard, face: Box): Box[] {
  const pieces = [face]
  for (const { way, atMm, fromMm, toMm, kerfMm } of cuts) {
    const isRip = way === 'rip'
    const at = pieces.findIndex(({ x0, y0, x1, y1 }) => {
      const [from, to, low, high] = isRip ? [x0, x1, y0, y1] : [y0, y1, x0, x1]
      return Math.abs(from - fromMm) < NEAR && Math.abs(to - toMm) < NEAR && atMm > low && atMm + kerfMm <= high + NEAR
    })
    expect(at, `${way} at ${atMm} goes right through a piece`).toBeGreaterThanOrEqual(0)
    const [piece] = pieces.splice(at, 1)
    const halves = isRip
      ? [
          { ...piece!, y1: atMm },
          { ...piece!, y0: atMm + kerfMm },
        ]
      : [
          { ...piece!, x1: atMm },
          { ...piece!, x0: atMm + kerfMm },
        ]
    pieces.push(...halves.filter(({ x0, y0, x1, y1 }) => x1 - x0 > 1e-9 && y1 - y0 > 1e-9))
  }
  return pieces
}

/** Everything a layout promises, looked at pair by pair. */
export function expectSound(
  layout: BoardLayout,
  parts: readonly LayoutPart[],
  boards: readonly StockBoard[],
  { kerfMm, trimMm }: LayoutRules,
): void {
  expect(layout.boards.map(({ boardId }) => boardId)).toEqual(boards.map(({ id }) => id))
  layout.boards.forEach((sawn, index) => {
    const board = boards[index]!
    const face = { x0: trimMm, y0: trimMm, x1: board.lengthMm - trimMm, y1: board.widthMm - trimMm }
    const boxes = sawn.placements.map(boxOf)
    const volumeMm3 = board.lengthMm * board.widthMm * board.thicknessMm
    expect(sawn.partsMm3 + sawn.offcutsMm3 + sawn.lostMm3).toBeCloseTo(volumeMm3, 2)
    if (boxes.length === 0) {
      expect(sawn.offcutsMm3).toBeCloseTo(volumeMm3, 2)
      return
    }
    for (const box of boxes) {
      expect(Math.min(box.x0 - face.x0, box.y0 - face.y0, face.x1 - box.x1, face.y1 - box.y1)).toBeGreaterThan(-NEAR)
      for (const other of boxes) {
        if (other === box) continue
        const apartMm = Math.max(other.x0 - box.x1, box.x0 - other.x1, other.y0 - box.y1, box.y0 - other.y1)
        expect(apartMm).toBeGreaterThan(kerfMm - NEAR)
      }
    }
    for (const one of sawn.placements) {
      const part = parts.find(({ id }) => id === one.partId)!
      const { lengthMm, widthMm, thicknessMm } = part.size
      expect([one.lengthMm, one.widthMm]).toEqual(one.isTurned ? [widthMm, lengthMm] : [lengthMm, widthMm])
      if (part.grain !== 'any') expect(one.isTurned).toBe(part.grain === 'acrossLength')
      expect(one.copies).toBeGreaterThanOrEqual(1)
      expect(one.copies * thicknessMm + (one.copies - 1) * kerfMm).toBeLessThan(board.thicknessMm + NEAR)
      if (part.isBookmatched && part.quantity % 2 === 0) expect(one.copies % 2).toBe(0)
    }
    expect(canBeSawn(boxes, kerfMm), 'guillotine').toBe(true)
    const whole = sawn.offcuts.filter(({ thicknessMm }) => thicknessMm === board.thicknessMm)
    expect(text(sawByCuts(sawn, face))).toEqual(text([...boxes, ...whole.map(boxOf)]))

    // What is lost, counted by the saw: the trim, every cut, and every cut between slices.
    const faceMm2 = (face.x1 - face.x0) * (face.y1 - face.y0)
    const cutMm2 = sawn.cuts.reduce((sum, cut) => sum + cut.kerfMm * (cut.toMm - cut.fromMm), 0)
    const sliceMm3 = sawn.placements.reduce((sum, one) => {
      const leftMm = board.thicknessMm - one.copies * one.thicknessMm - (one.copies - 1) * kerfMm
      return sum + one.lengthMm * one.widthMm * ((one.copies - 1) * kerfMm + Math.min(leftMm, kerfMm))
    }, 0)
    const lostMm3 = volumeMm3 - faceMm2 * board.thicknessMm + cutMm2 * board.thicknessMm + sliceMm3
    expect(Math.abs(sawn.lostMm3 - lostMm3) / volumeMm3).toBeLessThan(1e-6)
  })

  for (const part of parts) {
    const placed = layout.boards
      .flatMap(({ placements }) => placements)
      .reduce((sum, one) => sum + (one.partId === part.id ? one.copies : 0), 0)
    const refused = layout.unplaced.reduce((sum, one) => sum + (one.partId === part.id ? one.quantity : 0), 0)
    expect(placed + refused, part.id).toBe(part.quantity)
  }
}

/**
 * The most face that rectangles can fill of a board when all is sawn by cuts right through: for every set of them the boxes it can be put
 * together in, side by side or one beyond the other, of which only those are kept that no other is within. Exact for the few it can do.
 */
export function mostFillMm2(
  parts: readonly { readonly lengthMm: number; readonly widthMm: number; readonly mayTurn: boolean }[],
  board: { readonly lengthMm: number; readonly widthMm: number },
  kerfMm: number,
): number {
  type Shape = readonly [lengthMm: number, widthMm: number]
  const shapes: Shape[][] = []
  let most = 0
  for (let set = 1; set < 1 << parts.length; set++) {
    const found: Shape[] = []
    const own = parts.filter((_, i) => (set & (1 << i)) !== 0)
    if (own.length === 1) {
      const { lengthMm, widthMm, mayTurn } = own[0]!
      found.push([lengthMm, widthMm])
      if (mayTurn) found.push([widthMm, lengthMm])
    }
    for (let some = (set - 1) & set; some > 0; some = (some - 1) & set)
      for (const [l, w] of shapes[some]!)
        for (const [m, v] of shapes[set & ~some]!) {
          found.push([l + kerfMm + m, Math.max(w, v)])
          found.push([Math.max(l, m), w + kerfMm + v])
        }
    shapes[set] = found.filter(([l, w], i) => !found.some(([m, v], j) => m <= l && v <= w && (m < l || v < w || j < i)))
    if (shapes[set]!.some(([l, w]) => l <= board.lengthMm + 1e-9 && w <= board.widthMm + 1e-9))
      most = Math.max(
        most,
        own.reduce((sum, { lengthMm, widthMm }) => sum + lengthMm * widthMm, 0),
      )
  }
  return most
}
