import { arcCubics } from '../../drawing/arcCubics.ts'
import type { PathCommand } from '../../drawing/drawing.ts'
import { svgNumber } from '../../drawing/svgPath.ts'

const DECIMALS = 5

/** Numbers as a content stream carries them, to a hundred-thousandth of a millimetre, apart from each other. */
export const pdfNumbers = (...values: readonly number[]): string =>
  values.map((value) => String(svgNumber(value, DECIMALS))).join(' ')

const OPERATORS = { M: 'm', L: 'l', C: 'c', Z: 'h' } as const

/** The same line stands on every sheet it runs over, and on their maps. */
const known = new WeakMap<readonly PathCommand[], string>()

/** A path as operators that build it. Content streams know no arcs: cubics stand for them, within 0.0002 mm. */
export function pdfPath(commands: readonly PathCommand[]): string {
  const before = known.get(commands)
  if (before !== undefined) return before
  const path = arcCubics(commands)
    .map(([letter, ...numbers]) => (letter === 'Z' ? OPERATORS.Z : `${pdfNumbers(...numbers)} ${OPERATORS[letter]}`))
    .join('\n')
  known.set(commands, path)
  return path
}
