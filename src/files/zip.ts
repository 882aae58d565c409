import { zipSync } from 'fflate'

export interface ZipEntry {
  /** Path inside the archive, parts parted by a slash. */
  readonly path: string
  readonly bytes: Uint8Array
  /** Worth squeezing: text is, a PDF is squeezed already. */
  readonly isText: boolean
}

/** A zip archive; the day of its entries is given, so that the same entries make the same bytes. */
export function writeZip(entries: readonly ZipEntry[], dateIso: string): Uint8Array<ArrayBuffer> {
  // Noon, so that no zone of a reader shifts the day; archives know no zone.
  const mtime = new Date(`${dateIso}T12:00:00`)
  return zipSync(
    Object.fromEntries(entries.map(({ path, bytes, isText }) => [path, [bytes, { level: isText ? 6 : 0, mtime }]])),
  )
}
