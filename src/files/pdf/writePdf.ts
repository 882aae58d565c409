import type { Page } from '../../papers/page.ts'
import { addMark } from './pdfMarks.ts'
import { openPdf, type PdfFonts } from './pdfSheet.ts'

export type { PdfFonts }

export interface PdfChoice {
  readonly fonts: PdfFonts
  /** What the file says it is called. */
  readonly title: string
  /** The day it says it was made: nothing else of it depends on when that is. */
  readonly dateIso: string
  /** After each page; where it gives a promise, the next page waits for it. */
  readonly onPage?: (done: number, of: number) => void | Promise<void>
}

/**
 * Pages as a PDF: each at its true size, lines as lines, lettering as text in fonts that travel with it, and the wish not to be fitted to a
 * sheet. The same pages, fonts and day give the same bytes.
 */
export async function writePdf(
  pages: readonly Page[],
  { fonts, title, dateIso, onPage }: PdfChoice,
): Promise<Uint8Array<ArrayBuffer>> {
  const sheet = openPdf(fonts, { title, dateIso })
  for (const [i, page] of pages.entries()) {
    sheet.beginPage(page.widthMm, page.heightMm)
    for (const block of page.blocks) for (const mark of block.marks) addMark(sheet, mark)
    // oxlint-disable-next-line no-await-in-loop
    await onPage?.(i + 1, pages.length)
  }
  return sheet.finish()
}
