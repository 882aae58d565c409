/** A piece of board seen from its face: x along the board's length and grain, y across it. Mm. */
export interface Rect {
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly widthMm: number
}

/**
 * A straight cut right through the piece that is on the saw. A rip runs along the grain, at a place across the board; a crosscut runs across
 * it, at a place along the board. The kerf lies from that place on.
 */
export interface SawCut {
  readonly way: 'rip' | 'crosscut'
  readonly atMm: number
  readonly fromMm: number
  readonly toMm: number
  /** What the cut takes: the saw's kerf, or what there is where there is less. */
  readonly kerfMm: number
}

export interface Sawn {
  readonly taken: Rect
  readonly left: readonly Rect[]
  readonly cuts: readonly SawCut[]
}

/** Sizes that differ by less are the same. */
export const SAME_MM = 1e-9

/** Sawing a corner of the wanted size off a piece that is large enough, the one at its least x and y, in at most two cuts. */
export function sawCorner(
  piece: Rect,
  wanted: { readonly lengthMm: number; readonly widthMm: number },
  first: SawCut['way'],
  kerfMm: number,
): Sawn {
  const { xMm, yMm } = piece
  const lengthMm = Math.min(wanted.lengthMm, piece.lengthMm)
  const widthMm = Math.min(wanted.widthMm, piece.widthMm)
  const overLengthMm = piece.lengthMm - lengthMm
  const overWidthMm = piece.widthMm - widthMm
  const left: Rect[] = []
  const cuts: SawCut[] = []

  const rip = (alongMm: number) => {
    if (overWidthMm <= SAME_MM) return
    const kerf = Math.min(kerfMm, overWidthMm)
    cuts.push({ way: 'rip', atMm: yMm + widthMm, fromMm: xMm, toMm: xMm + alongMm, kerfMm: kerf })
    if (overWidthMm - kerf > SAME_MM)
      left.push({ xMm, yMm: yMm + widthMm + kerf, lengthMm: alongMm, widthMm: overWidthMm - kerf })
  }
  const crosscut = (acrossMm: number) => {
    if (overLengthMm <= SAME_MM) return
    const kerf = Math.min(kerfMm, overLengthMm)
    cuts.push({ way: 'crosscut', atMm: xMm + lengthMm, fromMm: yMm, toMm: yMm + acrossMm, kerfMm: kerf })
    if (overLengthMm - kerf > SAME_MM)
      left.push({ xMm: xMm + lengthMm + kerf, yMm, lengthMm: overLengthMm - kerf, widthMm: acrossMm })
  }
  if (first === 'rip') {
    rip(piece.lengthMm)
    crosscut(widthMm)
  } else {
    crosscut(piece.widthMm)
    rip(lengthMm)
  }
  return { taken: { xMm, yMm, lengthMm, widthMm }, left, cuts }
}
