import type { PlanField } from '../../core/planFields.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { type Figure, figureText, wordFigure } from '../../format/figure.ts'
import { formatDecimal } from '../../format/formatDecimal.ts'
import { formatLength } from '../../format/formatLength.ts'
import { formatAngle } from '../../format/formatQuantity.ts'
import { FIELDS } from '../../record/fields.ts'
import { isPlainObject, sameJson } from '../../record/path.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { choiceWord } from '../../words/fields/choices.ts'
import { countedWhole, WHOLE_WORDS } from '../../words/models.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'

interface Props {
  readonly field: PlanField
  readonly value: unknown
  readonly units: ShopUnits
  /** What stands beside it: a value that differs and would read the same is said to be changed. */
  readonly beside: readonly unknown[]
}

/** The value of one field of a plan in the shop's unit; of what is replaced whole, a short description. */
export function PlanValue({ field, value, units, beside }: Props) {
  const figure = figureOf(field, value, units)
  const text = textOf(field, value, units)
  const isDisguised = beside.some((other) => !sameJson(other, value) && textOf(field, other, units) === text)
  if (isDisguised) return <>{WHOLE_WORDS.changed(text)}</>
  return figure === null ? <>{text}</> : <FigureText figure={figure} words={FIGURE_WORDS} />
}

function figureOf(field: PlanField, value: unknown, units: ShopUnits): Figure | null {
  const range = FIELDS[field]
  if (value === 'flat' && range.type === 'length') return wordFigure('flat')
  if (typeof value !== 'number') return null
  if (range.type === 'length') return formatLength(value, range.quantity, units)
  if (range.type === 'angle') return formatAngle(value, 3)
  return range.type === 'plain' ? formatDecimal(value, range.unit) : null
}

function textOf(field: PlanField, value: unknown, units: ShopUnits): string {
  const figure = figureOf(field, value, units)
  if (figure !== null) return figureText(figure)
  if (field === 'outline.drawnPath') return pathText(value)
  if (Array.isArray(value)) return countedWhole(field, value.length)
  if (isPlainObject(value)) return countedWhole(field, Object.keys(value).length)
  if (value === null) return field === 'sideBraces.atMm' ? WHOLE_WORDS.evenly : WHOLE_WORDS.open
  if (typeof value === 'string') return choiceWord(field, value) ?? value
  return typeof value === 'number' ? String(value) : WHOLE_WORDS.open
}

function pathText(value: unknown): string {
  if (!isPlainObject(value)) return WHOLE_WORDS.noPath
  const { fileName } = value
  return typeof fileName === 'string' && fileName !== '' ? fileName : WHOLE_WORDS.path
}
