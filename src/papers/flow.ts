import { type Block, shiftBlock } from './page.ts'

/** What is to be set on pages in order. A whole block is never split; rows are split between rows only. */
export type Piece =
  | {
      readonly kind: 'whole'
      /** Its top at 0. */
      readonly block: Block
      readonly airMm: number
      /** Never the last thing on a page. */
      readonly keepsWithNext: boolean
    }
  | {
      readonly kind: 'rows'
      readonly count: number
      readonly airMm: number
      /** Fewer rows than this are not left alone at the foot of a page, nor carried alone to the next. */
      readonly least: number
      readonly heightMm: (from: number, to: number) => number
      readonly lay: (from: number, to: number) => Block
    }

/** Pieces that belong together, and what stands over them again where they run on to a further page. */
export interface Run {
  readonly pieces: readonly Piece[]
  readonly again: Block | null
}

export interface Sheet {
  readonly topMm: number
  readonly bottomMm: number
}

/** Air above a run that does not begin its page. */
const BETWEEN_RUNS_MM = 6
/** A run that would fit on a page of its own stays whole, unless it has a long table and more than this part of the page is free. */
const WORTH_SPLITTING = 0.5
const LONG_TABLE = 12

/** Sets runs on pages, one after the other. Each page is the list of its blocks, top to bottom. */
export function flowOntoPages(runs: readonly Run[], sheet: Sheet): Block[][] {
  const roomMm = sheet.bottomMm - sheet.topMm
  const pages: Block[][] = [[]]
  let yMm = sheet.topMm
  const atTop = () => yMm === sheet.topMm
  const turn = () => {
    pages.push([])
    yMm = sheet.topMm
  }
  const put = (block: Block, airMm: number) => {
    const downMm = atTop() ? 0 : airMm
    pages.at(-1)!.push(shiftBlock(block, yMm + downMm))
    yMm += downMm + block.area.heightMm
  }

  for (const run of runs) {
    const wholeMm = heightOfRunMm(run)
    const leftMm = sheet.bottomMm - yMm - BETWEEN_RUNS_MM
    const splits =
      leftMm > roomMm * WORTH_SPLITTING && run.pieces.some((piece) => piece.kind === 'rows' && piece.count > LONG_TABLE)
    if (!atTop() && leftMm < wholeMm && wholeMm <= roomMm && !splits) turn()
    if (!atTop()) yMm += BETWEEN_RUNS_MM
    const turnOn = (begun: boolean) => {
      turn()
      if (begun && run.again !== null) put(run.again, 0)
    }
    run.pieces.forEach((piece, i) => {
      const airMm = () => (atTop() ? 0 : piece.airMm)
      if (piece.kind === 'whole') {
        const needMm = () =>
          airMm() + piece.block.area.heightMm + (piece.keepsWithNext ? leastMm(run.pieces, i + 1) : 0)
        if (yMm + needMm() > sheet.bottomMm && !atTop()) turnOn(i > 0)
        put(piece.block, piece.airMm)
        return
      }
      let from = 0
      let turned = false
      while (from < piece.count) {
        const fit = rowsThatFit(piece, from, sheet.bottomMm - yMm - airMm())
        const to = fit < piece.count ? Math.min(fit, piece.count - piece.least) : fit
        const enough = Math.min(piece.least, piece.count - from)
        if (to - from < enough && !atTop() && !turned) {
          turnOn(i > 0 || from > 0)
          turned = true
          continue
        }
        const end = to > from ? to : Math.max(fit, from + 1)
        put(piece.lay(from, end), piece.airMm)
        from = end
        turned = false
      }
    })
  }
  return pages
}

function rowsThatFit(piece: Extract<Piece, { kind: 'rows' }>, from: number, roomMm: number): number {
  let to = from
  while (to < piece.count && piece.heightMm(from, to + 1) <= roomMm) to += 1
  return to
}

/** The least that has to follow a piece which may not end a page. */
function leastMm(pieces: readonly Piece[], i: number): number {
  const piece = pieces[i]
  if (piece === undefined) return 0
  if (piece.kind === 'rows') return piece.airMm + piece.heightMm(0, Math.min(piece.least, piece.count))
  return piece.airMm + piece.block.area.heightMm + (piece.keepsWithNext ? leastMm(pieces, i + 1) : 0)
}

function heightOfRunMm(run: Run): number {
  return run.pieces.reduce(
    (sum, piece) =>
      sum + piece.airMm + (piece.kind === 'rows' ? piece.heightMm(0, piece.count) : piece.block.area.heightMm),
    0,
  )
}
