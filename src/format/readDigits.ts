import Fraction from 'fraction.js'
import type { Dialect } from './dialect.ts'

/** One written number. `choices` holds its two spellings when the comma leaves it open which one is meant. */
export type Digits = {
  readonly value: Fraction
  readonly isWhole: boolean
  readonly choices: readonly [string, string] | null
}

/**
 * A run of digits, points and commas as an exact number; null when no way of writing numbers looks like that.
 *
 * 98.5 and 98,5 are decimals, 1.234,5 and 1,234.5 have thousands set off. 1,234 may be either and is left to the dialect; 1.234 is
 * always a decimal, 0,085 and 1234,567 too, since thousands are never set off like that.
 */
export function readDigits(run: string, comma: Dialect['comma']): Digits | null {
  if (/^\d+$/u.test(run)) return exact(run)
  if (/^(?:\d*\.\d+|\d+\.)$/u.test(run)) return exact(run)
  if (/^[1-9]\d{0,2}(?:,\d{3})+\.\d*$/u.test(run)) return exact(run.replaceAll(',', ''))
  if (/^[1-9]\d{0,2}(?:\.\d{3})+,\d*$/u.test(run)) return exact(run.replaceAll('.', '').replace(',', '.'))
  if (/^[1-9]\d{0,2}(?:,\d{3}){2,}$/u.test(run)) return exact(run.replaceAll(',', ''))
  if (/^[1-9]\d{0,2}(?:\.\d{3}){2,}$/u.test(run)) return exact(run.replaceAll('.', ''))
  if (!/^(?:\d*,\d+|\d+,)$/u.test(run)) return null
  const asDecimal = run.replace(',', '.')
  const asThousands = run.replace(',', '')
  const couldBeThousands = /^[1-9]\d{0,2},\d{3}$/u.test(run)
  if (couldBeThousands && comma === 'grouping') return exact(asThousands)
  if (couldBeThousands && comma === 'asked') return { ...exact(asDecimal), choices: [asDecimal, asThousands] }
  return exact(asDecimal)
}

function exact(decimal: string): Digits {
  const [whole = '', part = ''] = decimal.split('.')
  return {
    value: new Fraction(BigInt(whole + part || '0'), 10n ** BigInt(part.length)),
    isWhole: !decimal.includes('.'),
    choices: null,
  }
}
