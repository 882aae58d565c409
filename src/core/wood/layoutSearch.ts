import { CUT_ORDERS, FITS, layOutBy, type Run, type Strategy } from './layoutRun.ts'
import { volumeMm3 } from './part.ts'
import type { LayoutPart, LayoutRules, StockBoard } from './placement.ts'

/** Up to so many pieces every order of them is tried, where the usual ones leave something over. */
const ALL_ORDERS_UP_TO = 5
/** Looks at a piece of board by a part, over all strategies: what bounds the search. */
const MOST_LOOKS = 1.5e6

interface Tried {
  readonly strategy: Strategy
  readonly run: Run
}

/**
 * The best run found, most volume placed first; the first of equals. Usual orders of boards and parts come first; where they leave
 * something over, every order of a few pieces, or any two of many in each other's place.
 */
export function bestRun(parts: readonly LayoutPart[], boards: readonly StockBoard[], rules: LayoutRules): Run {
  const tryOut = (strategy: Strategy): Tried => ({ strategy, run: layOutBy(strategy, parts, boards, rules) })
  const orders = boardOrders(boards)
  const pieces = parts.flatMap(({ quantity }, i) => Array.from({ length: quantity }, () => i))
  const most = Math.max(Math.floor(MOST_LOOKS / Math.max(pieces.length * (pieces.length + boards.length), 1)), 1)
  let best = tryOut(FIRST)
  const tryAll = (list: readonly Strategy[]) => {
    for (const tried of list.slice(0, most).map(tryOut)) if (isBetter(tried.run, best.run)) best = tried
  }
  tryAll(strategies(orders, usualOrders(parts), false))
  if (best.run.left.every((count) => count === 0)) return best.run
  if (pieces.length > ALL_ORDERS_UP_TO) return swapped(best, pieces, tryOut, most / 2).run
  tryAll(strategies(orders, arrangements(pieces), true))
  return best.run
}

/** The best order with any two of its pieces in each other's place, as long as that makes it better, in every way to fit and to cut. */
function swapped(
  start: Tried,
  pieces: readonly number[],
  tryOut: (strategy: Strategy) => Tried,
  mostTries: number,
): Tried {
  const first = start.strategy.partOrder.flatMap((part) => pieces.filter((one) => one === part))
  let best: Tried = { ...start, strategy: { ...start.strategy, partOrder: first, isOneByOne: true } }
  let tries = 0
  for (let isFound = true; isFound; ) {
    isFound = false
    const { partOrder: order } = best.strategy
    for (let i = 0; i < order.length; i++)
      for (let j = i + 1; j < order.length; j++) {
        if (order[i] === order[j]) continue
        for (const fit of FITS)
          for (const cutOrder of CUT_ORDERS) {
            if (++tries > mostTries) return best
            const tried = tryOut({
              ...best.strategy,
              partOrder: order.with(i, order[j]!).with(j, order[i]!),
              fit,
              cutOrder,
            })
            if (!isBetter(tried.run, best.run)) continue
            best = tried
            isFound = true
          }
      }
  }
  return best
}

const FIRST: Strategy = { boardOrder: [], partOrder: [], isOneByOne: false, fit: 'leastArea', cutOrder: 'rip' }

/** The thinnest board first and the smaller of equals; the least first; the most first. */
const boardOrders = (boards: readonly StockBoard[]): readonly number[][] =>
  ordersOf(boards, [
    ({ thicknessMm, lengthMm, widthMm }) => thicknessMm * 1e9 + lengthMm * widthMm,
    volumeMm3,
    (board) => -volumeMm3(board),
  ])

/** The largest part first, by its face, its length, its width, both together, its thickness. */
const usualOrders = (parts: readonly LayoutPart[]): readonly number[][] =>
  ordersOf(parts, [
    ({ size }) => -size.lengthMm * size.widthMm,
    ({ size }) => -size.lengthMm,
    ({ size }) => -size.widthMm,
    ({ size }) => -(size.lengthMm + size.widthMm),
    ({ size }) => -size.thicknessMm,
  ])

/** The orders with every way to fit and to cut. */
const strategies = (
  boardOrdersToTry: readonly (readonly number[])[],
  partOrders: readonly (readonly number[])[],
  isOneByOne: boolean,
): readonly Strategy[] =>
  boardOrdersToTry.flatMap((boardOrder) =>
    partOrders.flatMap((partOrder) =>
      FITS.flatMap((fit) => CUT_ORDERS.map((cutOrder) => ({ boardOrder, partOrder, isOneByOne, fit, cutOrder }))),
    ),
  )

/** Indexes by rising value of each measure; equals stay as they come. An order that was there already is left out. */
function ordersOf<T>(things: readonly T[], measures: readonly ((thing: T) => number)[]): number[][] {
  const seen = new Set<string>()
  return measures
    .map((measure) => things.map((_, i) => i).sort((a, b) => measure(things[a]!) - measure(things[b]!) || a - b))
    .filter((order) => {
      const name = order.join()
      return seen.has(name) ? false : seen.add(name).size > 0
    })
}

/** Every order of the items, each once though some are alike. */
function arrangements(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]]
  return [...new Set(items)].flatMap((first) => {
    const at = items.indexOf(first)
    return arrangements(items.filter((_, i) => i !== at)).map((rest) => [first, ...rest])
  })
}

const placedMm3 = ({ boards }: Run): number =>
  boards.reduce((sum, { placements }) => sum + placements.reduce((own, one) => own + volumeMm3(one) * one.copies, 0), 0)
const sawnIntoMm3 = ({ boards }: Run): number =>
  boards.reduce((sum, { board, placements }) => sum + (placements.length > 0 ? volumeMm3(board) : 0), 0)
const largestMm3 = ({ boards }: Run): number =>
  Math.max(
    0,
    ...boards.flatMap(({ board, pieces, placements }) =>
      placements.length === 0 ? [] : pieces.map((piece) => piece.lengthMm * piece.widthMm * board.thicknessMm),
    ),
  )

function isBetter(one: Run, other: Run): boolean {
  for (const differ of [
    placedMm3(one) - placedMm3(other),
    sawnIntoMm3(other) - sawnIntoMm3(one),
    largestMm3(one) - largestMm3(other),
  ])
    if (Math.abs(differ) > 1e-6) return differ > 0
  return false
}
