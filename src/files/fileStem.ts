/** A name that every system takes for a file: letters and digits of the parts, joined by hyphens, at most so many signs; `otherwise` where there are none. */
export function fileStem(parts: readonly string[], otherwise: string, most: number): string {
  const words =
    parts
      .join(' ')
      .normalize('NFC')
      .match(/[\p{L}\p{N}]+/gu) ?? []
  return words.join('-').slice(0, most) || otherwise
}
