import { countCannot } from '../core/findings.ts'
import { type Block, MARGIN_MM, type Page, PAPER_SIZES, shiftBlock } from './page.ts'
import { flowOntoPages, type Piece, type Run } from './flow.ts'
import { layCautions, layCautionsInFull, layNote } from './blocks/caution.ts'
import { layHeading, layHeadingAgain, layPlainHeading } from './blocks/heading.ts'
import { layInstructions } from './blocks/instructions.ts'
import { layTitleBlock, TITLE_BLOCK_MM } from './blocks/titleBlock.ts'
import type { Column } from './pen.ts'
import { CAUTION_KEYS, type CautionKey } from '../record/patterns/cautions.ts'
import { STAGES } from '../record/patterns/stagePatterns.ts'
import { sawsNoProfile } from './stageNumbers.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'
import { stageTables } from './stageTables.ts'
import { taperNote } from './taperNote.ts'

const ABOVE_TITLE_BLOCK_MM = 4
const UNDER_WARNING_MM = 4

/**
 * The stage sheet of one instrument: the chosen stages in order, then their cautions in full, on as many pages as it takes.
 * Laid out once; every writer sets the same pages. No stage chosen: no page.
 */
export function layStageSheet(order: StageSheetOrder): readonly Page[] {
  if (order.stages.length === 0) return []
  const { widthMm, heightMm } = PAPER_SIZES[order.paperSize]
  const column: Column = { leftMm: MARGIN_MM, widthMm: widthMm - 2 * MARGIN_MM }
  const titleTopMm = heightMm - MARGIN_MM - TITLE_BLOCK_MM
  const runs = [
    ...order.stages.map((stage, i) => layStage(order, stage, column, i === 0)),
    ...cautionsRun(order, column),
  ]
  const warning = misfitWarning(order, column)
  const topMm = MARGIN_MM + (warning === null ? 0 : warning.area.heightMm + UNDER_WARNING_MM)
  const pages = flowOntoPages(runs, { topMm, bottomMm: titleTopMm - ABOVE_TITLE_BLOCK_MM })
  return pages.map((blocks, i) => {
    const place = { number: i + 1, count: pages.length }
    const title = layTitleBlock(order, { ...place, shows: showsOf(order, blocks) }, column)
    const head = warning === null ? [] : [shiftBlock(warning, MARGIN_MM)]
    return {
      size: order.paperSize,
      widthMm,
      heightMm,
      ...place,
      blocks: [...head, ...blocks, shiftBlock(title, titleTopMm)],
    }
  })
}

/** A sheet is cut to: while something cannot be built, every page says so before anything else. */
function misfitWarning(order: StageSheetOrder, column: Column): Block | null {
  const count = countCannot(order.computed.findings)
  return count === 0 ? null : layCautions([order.words.paper.misfits(count)], null, column)
}

function layStage(order: StageSheetOrder, stage: StageOnSheet, column: Column, isFirst: boolean): Run {
  const { words } = order
  const pattern = STAGES[stage.key]
  const drawings = pattern.drawings.flatMap((name) => order.drawingOf(name) ?? [])
  const whole = (block: Block, airMm: number, keepsWithNext: boolean): Piece => ({
    kind: 'whole',
    block,
    airMm,
    keepsWithNext,
  })
  const tables = stageTables(order, stage, column)
  const tapers = taperNote(order, stage)
  const noProfile = sawsNoProfile(stage.key, order.doc.plan.rim.method)
  const cautions = pattern.cautions.map((key) => words.cautions[key])
  const pieces: Piece[] = [
    ...(isFirst ? [whole(layNote(words.paper.legend, column), 0, true)] : []),
    whole(layHeading(stage, words, column), isFirst ? 2.5 : 0, true),
    ...(noProfile ? [whole(layNote(words.paper.profileOnRim, column), 0, true)] : []),
    whole(layInstructions(order, drawings, stage, column), 1, cautions.length > 0),
    ...(cautions.length > 0 ? [whole(layCautions(cautions, stage, column), 2, false)] : []),
    ...(tapers === null ? [] : [whole(layNote(tapers, column), 2, true)]),
    ...tables,
  ]
  return { pieces, again: layHeadingAgain(stage, words, column) }
}

/** The cautions the chosen stages call for, each once, in full. */
function cautionsRun(order: StageSheetOrder, column: Column): Run[] {
  const { paper, cautions } = order.words
  const keys = CAUTION_KEYS.filter((key) => order.stages.some((stage) => STAGES[stage.key].cautions.includes(key)))
  if (keys.length === 0) return []
  // Long ones beside long ones: less paper stays white.
  const lengthOf = (key: CautionKey) => cautions[key].full.join(' ').length
  const byLength = keys.toSorted((a, b) => lengthOf(b) - lengthOf(a))
  const pairs = byLength.flatMap((_, i) => (i % 2 === 0 ? [byLength.slice(i, i + 2)] : []))
  const heading = layPlainHeading(paper.cautionsInFull, column)
  const pieces: Piece[] = [
    { kind: 'whole', block: heading, airMm: 0, keepsWithNext: true },
    { kind: 'whole', block: layNote(paper.cautionsNote, column), airMm: 0, keepsWithNext: true },
    ...pairs.map(
      (pair): Piece => ({
        kind: 'whole',
        block: layCautionsInFull(
          pair.map((key) => cautions[key]),
          column,
        ),
        airMm: 4,
        keepsWithNext: false,
      }),
    ),
  ]
  return [{ pieces, again: null }]
}

/** What a page shows, for its title block. */
function showsOf(order: StageSheetOrder, blocks: readonly Block[]): string {
  const { titleBlock, cautionsInFull } = order.words.paper
  const places = order.stages.filter(({ id }) => blocks.some(({ stage }) => stage?.id === id)).map(({ place }) => place)
  return places.length === 0 ? cautionsInFull.toLowerCase() : titleBlock.stages(places, order.stagesTotal)
}
