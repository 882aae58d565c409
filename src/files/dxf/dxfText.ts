/** Signs that have a twin every lettering of a drawing program knows. */
const TWINS: Readonly<Record<string, string>> = { '−': '-', '–': '-', '’': "'", '“': '"', '”': '"', '″': '"', '⁄': '/' }

/**
 * A line of text as a TEXT of a DXF carries it: on one line, with plain spaces, and with plain signs where they say the same. A DXF of 2007 is
 * UTF-8, so other signs stand as they are: its older way, \U+ and a number, is shown to the letter by readers that go by the version.
 * What would begin a code there is written as the sign it is: a caret, two percent signs, a backslash before U+ or M+.
 */
export const dxfText = (text: string): string =>
  text
    .replaceAll(/\s+/gu, ' ')
    .replaceAll(/[−–’“”″⁄]/gu, (sign) => TWINS[sign] ?? sign)
    .replaceAll(/\\(?=[UM]\+)/g, '\\U+005C')
    .replaceAll('%%', '%%%%%%')
    .replaceAll('^', '^ ')
