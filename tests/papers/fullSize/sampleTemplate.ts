import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { compute } from '../../../src/core/compute.ts'
import { STARTING_UNITS } from '../../../src/core/quantity.ts'
import { drawingOf } from '../../../src/drawing/drawingOf.ts'
import type { PdfFonts } from '../../../src/files/pdf/pdfSheet.ts'
import type { SheetChoice, TemplateOrder } from '../../../src/papers/fullSize/fullSizeOrder.ts'
import type { SheetSize } from '../../../src/papers/page.ts'
import { enlargedWords, SEEN_FROM_WORDS, SHAPE_WORDS } from '../../../src/words/drawing.ts'
import { FULL_SIZE_WORDS } from '../../../src/words/fullSize.ts'
import { PAPER_WORDS } from '../../../src/words/paper.ts'
import { STEEL } from '../samplePlans.ts'

export const COMPUTED = compute(STEEL)

/** The whole body in plan, ready to be laid at full size. */
export function sampleTemplate(changes: Partial<TemplateOrder> = {}): TemplateOrder {
  return {
    drawing: drawingOf('plan', COMPUTED, STEEL),
    title: 'Body in plan',
    use: 'Lay it on the wood with the centrelines together.',
    doc: { number: '0412', title: 'Steel-string, 14 frets to the body' },
    shop: { units: STARTING_UNITS, name: '' },
    revisionCode: '7QK4ZD',
    dateIso: '2027-03-12',
    words: {
      drawing: { seenFrom: SEEN_FROM_WORDS, shapes: SHAPE_WORDS, enlarged: enlargedWords },
      paper: PAPER_WORDS,
      fullSize: FULL_SIZE_WORDS,
    },
    ...changes,
  }
}

export const sheetChoice = (size: SheetSize, changes: Partial<SheetChoice> = {}): SheetChoice => ({
  size,
  rollWidthMm: 914,
  overlapMm: 10,
  boxMeasuredMm: { across: 100, along: 100 },
  ...changes,
})

/** The lettering of the papers, as the app has it. */
export function barlow(): PdfFonts {
  const { resolve } = createRequire(import.meta.url)
  const file = (name: string) =>
    new Uint8Array(readFileSync(resolve(`@fontsource/barlow/files/barlow-${name}-normal.woff`)))
  return {
    plain: file('latin-400'),
    strong: file('latin-600'),
    plainMore: file('latin-ext-400'),
    strongMore: file('latin-ext-600'),
  }
}
