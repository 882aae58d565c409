import type { DrawnUnit } from '../record/drawnFile.ts'
import { type Affine, UNMOVED } from './affine.ts'

const NUMBER = String.raw`[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?`
const LENGTH = new RegExp(`^\\s*(${NUMBER})\\s*([a-zA-Z%]*)\\s*$`)
const LONGEST_LENGTH = 64

/** Units of length that have a size of their own. Source: CSS Values and Units 3, section 6.2: 96 px are an inch. */
const MM_OF: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  q: 0.25,
  in: 25.4,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
}
const MM_PER_PX = 25.4 / 96

const NAME_OF: Readonly<Record<string, DrawnUnit>> = {
  mm: 'mm',
  cm: 'cm',
  q: 'mm',
  in: 'inch',
  pt: 'point',
  pc: 'point',
}

/** A length in user units: of a pixel each, where it has a unit of its own. null where it cannot be read. */
export function readLength(text: string | undefined): number | null {
  const [, digits, unit = ''] = text === undefined || text.length > LONGEST_LENGTH ? [] : (LENGTH.exec(text) ?? [])
  if (digits === undefined) return null
  const lower = unit.toLowerCase()
  if (lower === '' || lower === 'px') return Number(digits)
  const mm = MM_OF[lower]
  return mm === undefined ? null : (Number(digits) * mm) / MM_PER_PX
}

/** A list of numbers parted by blanks, commas or their signs; null where it holds anything else. */
export function readNumbers(text: string): number[] | null {
  const found: number[] = []
  const rest = text.replaceAll(new RegExp(NUMBER, 'g'), (digits) => {
    found.push(Number(digits))
    return ' '
  })
  return /^[\s,]*$/.test(rest) ? found : null
}

/** What of a page decides its scale. */
export interface SvgPage {
  readonly width: string | undefined
  readonly height: string | undefined
  readonly viewBox: string | undefined
  readonly preserveAspectRatio: string | undefined
}

export interface PageScale {
  readonly unit: DrawnUnit | null
  /** From the coordinates on the page, y down, to mm (or, without a unit, to the page's own units) with y up. */
  readonly toDrawing: Affine
}

/** How the coordinates of an SVG page become mm; null where its view box cannot be read. */
export function readPageScale({ width, height, viewBox, preserveAspectRatio = '' }: SvgPage): PageScale | null {
  const box = viewBox === undefined ? [] : readNumbers(viewBox)
  if (box === null || (viewBox !== undefined && box.length !== 4)) return null
  const [x = 0, y = 0, boxWidth, boxHeight] = box
  if (boxWidth !== undefined && boxHeight !== undefined && !(boxWidth > 0 && boxHeight > 0)) return null
  const wide = absoluteLength(width)
  const high = absoluteLength(height)
  const unit = (wide ?? high)?.unit ?? null
  if (unit === null) return { unit, toDrawing: turnYUp(UNMOVED) }
  if (boxWidth === undefined || boxHeight === undefined)
    return { unit, toDrawing: turnYUp([MM_PER_PX, 0, 0, MM_PER_PX, 0, 0]) }
  const across = (wide?.mm ?? Number.NaN) / boxWidth
  const down = (high?.mm ?? Number.NaN) / boxHeight
  const [sx, sy] = [Number.isNaN(across) ? down : across, Number.isNaN(down) ? across : down]
  const one = preserveAspectRatio.includes('slice') ? Math.max(sx, sy) : Math.min(sx, sy)
  const [scaleX, scaleY] = preserveAspectRatio.trim().startsWith('none') ? [sx, sy] : [one, one]
  return { unit, toDrawing: turnYUp([scaleX, 0, 0, scaleY, -x * scaleX, -y * scaleY]) }
}

function absoluteLength(text: string | undefined): { readonly mm: number; readonly unit: DrawnUnit } | null {
  const [, digits, suffix = ''] = text === undefined || text.length > LONGEST_LENGTH ? [] : (LENGTH.exec(text) ?? [])
  const mmPerUnit = MM_OF[suffix.toLowerCase()]
  const unit = NAME_OF[suffix.toLowerCase()]
  const mm = Number(digits) * (mmPerUnit ?? Number.NaN)
  return unit !== undefined && mm > 0 ? { mm, unit } : null
}

/** On an SVG page y points down; here it turns up, for the whole drawing at once. */
const turnYUp = ([a, b, c, d, e, f]: Affine): Affine => [a, -b, c, -d, e, -f]
