import { describe, expect, it } from 'vitest'
import { layOutBoards } from '../../src/core/wood/boardLayout.ts'
import type { LayoutPart, StockBoard } from '../../src/core/wood/placement.ts'
import { plankDrawing } from '../../src/drawing/cutting/plankDrawing.ts'
import type { Drawing, LineRole } from '../../src/drawing/drawing.ts'

const board: StockBoard = { id: 'plank', lengthMm: 500, widthMm: 120, thicknessMm: 20 }
const part = (id: string, lengthMm: number, widthMm: number, thicknessMm = 20): LayoutPart => ({
  id,
  size: { lengthMm, widthMm, thicknessMm },
  grain: 'alongLength',
  quantity: 1,
  isBookmatched: false,
})
const RULES = { kerfMm: 2, trimMm: 10 }
const drawn = (parts: readonly LayoutPart[]): Drawing =>
  plankDrawing(board, layOutBoards(parts, [board], RULES).boards[0]!)

/** Least x and y, greatest x and y of every rectangle of one kind of line. */
const boxes = ({ shapes }: Drawing, role: LineRole): number[][] =>
  shapes.flatMap((shape) => {
    if (shape.kind !== 'path' || shape.role !== role) return []
    const points = shape.commands.flatMap((command) => (command[0] === 'M' || command[0] === 'L' ? [command] : []))
    const [xs, ys] = [points.map(([, x]) => x), points.map(([, , y]) => y)]
    return [[Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]]
  })
const numbers = ({ shapes }: Drawing) =>
  shapes.flatMap((shape) => (shape.kind === 'station' ? [[shape.number, shape.numberAt.x, shape.numberAt.y]] : []))

describe('a plank drawn', () => {
  // One piece 200 by 60 in the corner inside a trim of 10: 280 are left along the plank and 40 across, less a kerf of 2 each.
  const one = drawn([part('a', 200, 60)])

  it('shows the plank as it is, untrimmed, and the piece where the trim ends', () => {
    expect(boxes(one, 'edge')).toEqual([
      [0, 0, 500, 120],
      [10, 10, 210, 70],
    ])
    expect(one.bounds).toEqual({ minX: 0, minY: 0, maxX: 500, maxY: 120 })
    expect(numbers(one)).toEqual([[1, 110, 40]])
  })

  it('shows what is left, dashed, a kerf away from the piece and inside the trim', () => {
    const left = boxes(one, 'hidden')
    expect(left).toHaveLength(2)
    // Whichever cut comes first, one offcut begins past the piece along the plank, and one past it across.
    expect(left.map(([minX]) => minX).toSorted((a, b) => a! - b!)).toEqual([10, 212])
    expect(left.map(([, minY]) => minY).toSorted((a, b) => a! - b!)).toEqual([10, 72])
    expect(Math.max(...left.map(([, , maxX]) => maxX!))).toBe(490)
    expect(Math.max(...left.map(([, , , maxY]) => maxY!))).toBe(110)
    const areaMm2 = left.reduce((sum, [minX, minY, maxX, maxY]) => sum + (maxX! - minX!) * (maxY! - minY!), 0)
    // The usable face, less the piece, less the two kerfs: one right through, one as far as the other.
    const isRipFirst = left.some(([minX, , maxX]) => minX === 10 && maxX === 490)
    const kerfsMm2 = isRipFirst ? 2 * 480 + 2 * 60 : 2 * 100 + 2 * 200
    expect(areaMm2).toBeCloseTo(480 * 100 - 200 * 60 - kerfsMm2, 6)
  })

  it('numbers every piece from 1, in its middle, and lays none over another', () => {
    const drawing = drawn([part('a', 200, 60), part('b', 150, 30), part('c', 90, 30)])
    const pieces = boxes(drawing, 'edge').slice(1)
    expect(pieces).toHaveLength(3)
    expect(numbers(drawing).map(([number]) => number)).toEqual([1, 2, 3])
    numbers(drawing).forEach(([, x, y], i) => {
      const [minX, minY, maxX, maxY] = pieces[i]!
      expect(x).toBeCloseTo((minX! + maxX!) / 2, 9)
      expect(y).toBeCloseTo((minY! + maxY!) / 2, 9)
    })
    const rectangles = [...pieces, ...boxes(drawing, 'hidden')]
    rectangles.forEach(([minX, minY, maxX, maxY], i) => {
      for (const other of rectangles.slice(i + 1))
        expect(
          other[0]! >= maxX! - 1e-9 ||
            other[2]! <= minX! + 1e-9 ||
            other[1]! >= maxY! - 1e-9 ||
            other[3]! <= minY! + 1e-9,
        ).toBe(true)
    })
  })

  it('leaves out the slab under a piece that was resawn, and every offcut of a plank nothing lies on', () => {
    const thin = drawn([part('a', 200, 60, 5)])
    expect(boxes(thin, 'hidden')).toHaveLength(2)
    expect(boxes(thin, 'hidden')).not.toContainEqual([10, 10, 210, 70])
    const none = drawn([])
    expect(none.shapes).toHaveLength(1)
    expect(boxes(none, 'edge')).toEqual([[0, 0, 500, 120]])
  })
})
