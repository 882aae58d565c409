import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'

const read = (weight: 400 | 600): Uint8Array =>
  new Uint8Array(
    readFileSync(createRequire(import.meta.url).resolve(`@fontsource/barlow/files/barlow-latin-${weight}-normal.woff`)),
  )

/** The lettering of papers, as the page fetches it. */
export const SHEET_FONTS = { plain: read(400), strong: read(600) }
