import type { Computed } from '../../core/compute.ts'

/** A twin that needs an arch of its own is told from the first one by this after its id. */
const OTHER = ':treble'
/** Twins that agree this closely are cut by one template. */
const ALIKE_MM = 0.02
/** A face that nowhere rises more than this is planed along a straightedge: no template is sawn for it. */
const STRAIGHT_MM = 0.05

/** The braces that need an arch template, by id: each that has a length and is not straight, of twins that are alike the first. */
export function bracesToArch(computed: Computed): string[] {
  const { placed } = computed.geometry.bracing
  return placed.flatMap(({ id, half, lengthMm }, row) => {
    if (lengthMm <= 0 || isStraight(computed, row)) return []
    if (half !== 'treble') return [id]
    const first = placed.findIndex((other) => other.id === id)
    return areAlike(computed, first, row) ? [] : [`${id}${OTHER}`]
  })
}

/** The place among all braces of the one so named; null where there is none. */
export function braceRowOf({ geometry }: Computed, of: string | null): number | null {
  const isOther = of?.endsWith(OTHER) === true
  const id = isOther ? of.slice(0, -OTHER.length) : of
  const row = geometry.bracing.placed.findIndex((brace) => brace.id === id && (brace.half === 'treble') === isOther)
  return row < 0 ? null : row
}

/** Of the braces a template is cut for, the places among all: of one alone its own, of twins that are alike both; none where it is gone. */
export function braceRowsOf(computed: Computed, of: string | null): number[] {
  const row = braceRowOf(computed, of)
  if (row === null) return []
  const { placed } = computed.geometry.bracing
  const { id, half } = placed[row]!
  const twin = half === 'bass' ? placed.findIndex((other) => other.id === id && other.half === 'treble') : -1
  return twin >= 0 && areAlike(computed, row, twin) ? [row, twin] : [row]
}

const isStraight = ({ numbers }: Computed, row: number): boolean =>
  numbers.braceArch.every(({ number, riseMm }) => number !== row + 1 || Math.abs(riseMm) < STRAIGHT_MM)

/** Whether two braces have the same length, arch, heights and what is let in. */
function areAlike({ numbers }: Computed, a: number, b: number): boolean {
  const [one, other] = [numbers.braces[a], numbers.braces[b]]
  if (one === undefined || other === undefined) return false
  const near = (x: number, y: number) => Math.abs(x - y) < ALIKE_MM
  const archOf = (number: number) => numbers.braceArch.filter((row) => row.number === number)
  const [archA, archB] = [archOf(one.number), archOf(other.number)]
  const keys = [
    'lengthMm',
    'fromLetInMm',
    'toLetInMm',
    'fromTaperMm',
    'toTaperMm',
    'fromHeightMm',
    'toHeightMm',
  ] as const
  return (
    keys.every((key) => near(one[key], other[key])) &&
    archA.length === archB.length &&
    archA.every(({ riseMm }, i) => near(riseMm, archB[i]!.riseMm))
  )
}
