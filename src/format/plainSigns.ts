/**
 * The same entry in plain signs: typographic quotes and primes, built fractions, minus signs, dashes and odd spaces become the
 * signs of a keyboard; letters become small. A thin or fixed space that sets off thousands goes; other runs of blanks become one.
 */
export function plainSigns(text: string): string {
  return text
    .replace(/(?<![\d.,])\d{1,3}(?:[\u00a0\u2009\u202f]\d{3})+(?!\d|\s*[/\u2044\u2215])/gu, (digits) =>
      digits.replace(/\D/gu, ''),
    )
    .replace(
      /[\u00bc-\u00be\u2150-\u215e]|[\u2070\u00b9\u00b2\u00b3\u2074-\u2079]+\u2044[\u2080-\u2089]+/gu,
      builtFraction,
    )
    .replace(/[‘’‛′´`]/gu, "'")
    .replace(/[“”„‟″]/gu, '"')
    .replace(/''/gu, '"')
    .replace(/[−–—‐‑‒﹣－]/gu, '-')
    .replace(/[×✕∗·⋅]/gu, '*')
    .replace(/[÷∕⁄]/gu, '/')
    .replace(/º/gu, '°')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase()
}

/** Set off by a blank, so that 3½ becomes a mixed number and not thirty-one halves. */
const builtFraction = (sign: string): string => ` ${sign.normalize('NFKC').replace('\u2044', '/')}`
