import type { DrawnFile, DrawnFileProblem } from '../record/drawnFile.ts'
import { type Result, refuse } from '../record/result.ts'
import { MOST_DRAWN_BYTES, shortName } from './drawnPaths.ts'
import { readDxfOutline } from './dxfOutline.ts'
import { readSvgOutline } from './svgOutline.ts'

export interface OpenedDrawing {
  /** Fit to be shown on a line. */
  readonly fileName: string
  readonly file: DrawnFile
}

/** `unreadable`: the device gave no text, as of a file that was moved away. */
export type OpenProblem = DrawnFileProblem | 'unreadable'

/**
 * Reads a drawing another program saved: what begins like XML, or is called .svg, as SVG, anything else as DXF. A file of more than
 * 5 MB is refused before it is read.
 */
export async function openDrawing(file: Blob, name: string): Promise<Result<OpenedDrawing, OpenProblem>> {
  if (file.size > MOST_DRAWN_BYTES) return refuse('tooLarge')
  let text: string
  try {
    text = await file.text()
  } catch {
    return refuse('unreadable')
  }
  const isSvg = /^\uFEFF?\s*</.test(text.slice(0, 1000)) || /\.svg$/i.test(name)
  const read = isSvg ? readSvgOutline(text) : readDxfOutline(text)
  return read.ok ? { ok: true, value: { fileName: shortName(name), file: read.value } } : read
}
