import { outlineFromPath } from '../core/instrument/outlineFromPath.ts'
import { type Bounds, pathBounds, pathLengthMm, transformPath } from '../core/geometry/path.ts'
import { type Chain, type Healed, tracePath } from '../core/geometry/tracePath.ts'
import { MM_PER_INCH } from '../core/units/length.ts'
import type { DrawnFile } from '../record/drawnFile.ts'

/** Millimetres to one unit of a drawing that says no unit. A pixel: 96 to the inch. Source: CSS Values and Units 3, section 6.2. */
const MM_PER_UNIT = { asFile: 1, mm: 1, cm: 10, inch: MM_PER_INCH, px: MM_PER_INCH / 96 } as const

/** asFile: as the file says. byLength: scaled until the body is as long as the maker says. */
export type UnitChoice = keyof typeof MM_PER_UNIT | 'byLength'

/** A line of a drawing, its loose ends joined, in mm. */
export interface DrawnLine {
  /** The same however the drawing is scaled. */
  readonly key: number
  /** What the file calls it; may be empty. */
  readonly name: string
  readonly lengthMm: number
  readonly chain: Chain
}

export interface DrawnLines {
  /** The longest first. */
  readonly lines: readonly DrawnLine[]
  readonly healed: Healed
}

const MOST_NAMES = 3
/** How many of the longest lines are tried for an outline. */
const MOST_TRIED = 6
/** Scale and gaps closed hang on each other a little: it settles at once, or after one more round. */
const ROUNDS = 3
const PLAIN = { mmPerUnit: 1, end: 'asFound', treble: 'asDrawn', symmetry: 'mirrorBass', axis: 'found' } as const

/** The lines of a drawing at a scale, loose ends joined in true millimetres. */
export function traceLines({ paths }: DrawnFile, mmPerUnit: number): DrawnLines {
  const scaled = paths.map(({ path, isClosed }) => ({ path: transformPath(path, { scale: mmPerUnit }), isClosed }))
  const { chains, healed } = tracePath(scaled)
  const lines = chains.map((chain) => ({
    key: Math.min(...chain.from),
    name: [...new Set(chain.from.map((index) => paths[index]?.name ?? ''))]
      .filter(Boolean)
      .slice(0, MOST_NAMES)
      .join(', '),
    lengthMm: pathLengthMm(chain.path),
    chain,
  }))
  return { lines, healed }
}

/**
 * The line the maker chose; where none was, the longest that gives an outline, or the longest there is. Where the centreline runs does
 * not matter to that, and finding it takes long.
 */
export function chosenLine(lines: readonly DrawnLine[], key: number | null): DrawnLine | undefined {
  const asked = key === null ? undefined : lines.find((line) => line.key === key)
  if (asked !== undefined || lines.length < 2) return asked ?? lines[0]
  const gives = ({ chain }: DrawnLine) =>
    (['vertical', 'horizontal'] as const).some((axis) => outlineFromPath(chain, { ...PLAIN, axis }).ok)
  return lines.slice(0, MOST_TRIED).find(gives) ?? lines[0]
}

/** Millimetres to a unit of the drawing; `bodyLengthMm` and the chosen line count only where it is scaled to a length. */
export function mmPerUnitOf(file: DrawnFile, unit: UnitChoice, bodyLengthMm: number, key: number | null): number {
  if (unit !== 'byLength') return MM_PER_UNIT[unit]
  const largest = Math.max(...file.paths.map(({ path }) => longSide(pathBounds(path))))
  let scale = scaleBy(1, bodyLengthMm, largest)
  let before: DrawnLine | null = null
  for (let round = 0; round < ROUNDS; round++) {
    const line = chosenLine(traceLines(file, scale).lines, key)
    if (line === undefined) return scale
    if (before !== null && sameFrom(before, line)) return scale
    before = line
    const found = outlineFromPath(line.chain, PLAIN)
    // A line that gives no outline as it stands may give one with its centreline along or up the drawing.
    const lengthMm = found.ok ? found.value.lengthMm : longSide(pathBounds(line.chain.path))
    scale = scaleBy(scale, bodyLengthMm, lengthMm)
  }
  return scale
}

const sameFrom = (a: DrawnLine, b: DrawnLine): boolean =>
  a.chain.isClosed === b.chain.isClosed && a.chain.from.join() === b.chain.from.join()

const longSide = ({ minX, maxX, minY, maxY }: Bounds): number => Math.max(maxX - minX, maxY - minY)

function scaleBy(scale: number, wantedMm: number, nowMm: number): number {
  const next = (scale * wantedMm) / nowMm
  return next > 0 && Number.isFinite(next) ? next : scale
}
