/** A stretch of text and the font, by its place in the list, that has all its signs. */
interface Part {
  readonly font: number
  readonly text: string
}

/** What stands in for a sign no font at hand has: a plain sign of the same meaning. */
const PLAIN: Readonly<Record<string, string>> = {
  '\u2009': ' ',
  '\u202f': ' ',
  '♯': '#',
  '♭': 'b',
  '→': '>',
  '≤': '<=',
  '≥': '>=',
  '≈': '~',
  '⌀': 'ø',
}
const UNKNOWN = '?'

/** A text broken where another font has to take over; every sign of it, or a plain one in its place. */
export function inFont(
  text: string,
  fonts: readonly { readonly has: (codePoint: number) => boolean }[],
): readonly Part[] {
  const parts: Part[] = []
  const add = (sign: string): boolean => {
    const font = fonts.findIndex(({ has }) => has(sign.codePointAt(0)!))
    if (font < 0) return false
    const last = parts.at(-1)
    if (last?.font === font) parts[parts.length - 1] = { font, text: last.text + sign }
    else parts.push({ font, text: sign })
    return true
  }
  for (const sign of text.normalize('NFC')) if (!add(sign)) for (const plain of PLAIN[sign] ?? UNKNOWN) add(plain)
  return parts
}
