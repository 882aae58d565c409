/** A name that every system takes for a file: letters and digits of the parts, joined by hyphens, at most 90 signs. */
export function fileStem(parts: readonly string[]): string {
  const words =
    parts
      .join(' ')
      .normalize('NFC')
      .match(/[\p{L}\p{N}]+/gu) ?? []
  return words.join('-').slice(0, 90) || 'papers'
}
