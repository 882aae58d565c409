import type { Figure } from '../../core/figure.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'

/** Units a sheet states once, in its title block; a figure in a drawing leaves them out (ISO 129-1). */
const STATED: ReadonlySet<string> = new Set(['mm', 'in'])

/**
 * A value as it stands on a dimension line of this shop. What a 64th leaves over is only hinted at, as on a rule: 4 3/32"+ is a little
 * full, 4 3/32"− a little scant; tables and large figures say by how much.
 */
export const drawingFigure =
  (units: ShopUnits, words: { readonly flat: string; readonly none: string }) =>
  (value: Figure, quantity: Quantity): string => {
    const figure = formatQuantity(value, quantity, units)
    if (figure.word !== null) return words[figure.word]
    const short = figureText({ ...figure, remainder: null, unit: STATED.has(figure.unit) ? '' : figure.unit })
    return `${short}${figure.remainder?.charAt(0) ?? ''}`.replaceAll('-', '\u2212')
  }
