import type { BoardPlan, ScalePlan } from '../../neckPlan.ts'

/** A straight line across the board: where it crosses the centreline, from the tail, and how far it gains toward the neck per mm to the treble side. */
export interface CrossLine {
  readonly xMm: number
  readonly slant: number
}

/** How far across from the centreline a line leaves the board on either side, mm, both counted positive. */
export interface LineEnds {
  readonly bassMm: number
  readonly trebleMm: number
}

/** The fingerboard as a shape, in the frame of the body: x from the tail, y across with the treble side positive, heights under the crest. */
export interface Fretboard {
  /** On the centreline. */
  readonly scaleMm: number
  readonly bassScaleMm: number
  readonly trebleScaleMm: number
  readonly jointMm: number
  readonly nutMm: number
  readonly endMm: number
  readonly lastFret: number
  /** The line of a fret; 0 is the nut. */
  readonly fretLine: (fret: number) => CrossLine
  /** Uncompensated. */
  readonly saddleLine: CrossLine
  /** Half the board's width, straight from nut to end and beyond; never under 0. */
  readonly halfWidthAtMm: (xMm: number) => number
  /** Where a line leaves the board. */
  readonly endsOf: (line: CrossLine) => LineEnds
  /** Half the spread of the outer strings, straight from nut to saddle line. */
  readonly halfSpreadAtMm: (xMm: number) => number
  readonly radiusAtMm: (xMm: number) => number | 'flat'
  /** How far the board lies under its crest at a place. */
  readonly dropMm: (xMm: number, yMm: number) => number
  /** How far the frets lie under their plane at a place: nothing up to the joint, then the fall-off, even to the end. */
  readonly fallOffMm: (xMm: number) => number
}

/** What a fretboard is made from besides its plan: the body's length, and the spread of the outer strings. */
export interface FretboardSite {
  readonly bodyLengthMm: number
  readonly nutSpreadMm: number
  readonly saddleSpreadMm: number
}

/** A radius this much greater than what it is measured across stays a board; a compound one never turns inside out. */
const LEAST_RADIUS_MM = 30

/**
 * The board with its frets. Fret n stands S 2^(-n/12) from the uncompensated saddle line, the fret of the joint over the body's edge L:
 *
 *   x_n = L + S (2^(-n/12) - 2^(-J/12))      S on the centreline
 *
 * Fanned: the outer strings have scales of their own and share the square fret P, so a fret slants by
 *
 *   k_n = (S_treble - S_bass) (2^(-n/12) - 2^(-P/12)) / (spread there)
 *
 * and S is their mean. A line of slant k leaves the board, h wide to either side where it crosses the centreline and m wider per mm toward the tail, at
 *
 *   h / (1 + m k) on the treble side, h / (1 - m k) on the bass side
 *
 * Source: equal temperament (ISO 16); slant derived. A compound radius changes evenly along the board (a cone).
 */
export function makeFretboard(scale: ScalePlan, board: BoardPlan, site: FretboardSite): Fretboard {
  const { bodyLengthMm: jointMm, nutSpreadMm, saddleSpreadMm } = site
  const bassScaleMm = scale.lengthMm
  const trebleScaleMm = scale.fan === 'fanned' ? scale.trebleLengthMm : scale.lengthMm
  const scaleMm = (bassScaleMm + trebleScaleMm) / 2
  const atJoint = toSaddlePart(scale.jointFret)
  const atSquare = toSaddlePart(scale.squareFret)
  const saddleMm = jointMm - scaleMm * atJoint
  const lineAt = (part: number): CrossLine => {
    const spreadMm = saddleSpreadMm + (nutSpreadMm - saddleSpreadMm) * part
    return {
      xMm: saddleMm + scaleMm * part,
      slant: spreadMm > 0 ? ((trebleScaleMm - bassScaleMm) * (part - atSquare)) / spreadMm : 0,
    }
  }
  const nutMm = lineAt(1).xMm
  const endMm = lineAt(toSaddlePart(scale.frets)).xMm - board.endBeyondLastFretMm
  const taper = (board.widthAtTwelfthMm - board.nutWidthMm) / scaleMm // half the widening, over half the scale
  const overBodyMm = jointMm - endMm
  const lengthMm = Math.max(nutMm - endMm, 1)
  const halfWidthAtMm = (xMm: number): number => Math.max(board.nutWidthMm / 2 + taper * (nutMm - xMm), 0)
  const radiusAtMm = (xMm: number): number | 'flat' => {
    if (board.surface === 'flat') return 'flat'
    if (board.surface === 'single') return board.radiusMm
    const part = (nutMm - xMm) / lengthMm
    return Math.max(board.radiusMm + (board.endRadiusMm - board.radiusMm) * part, LEAST_RADIUS_MM)
  }
  return {
    scaleMm,
    bassScaleMm,
    trebleScaleMm,
    jointMm,
    nutMm,
    endMm,
    lastFret: scale.frets,
    fretLine: (fret) => lineAt(toSaddlePart(fret)),
    saddleLine: lineAt(0),
    halfWidthAtMm,
    endsOf: ({ xMm, slant }) => {
      const halfMm = halfWidthAtMm(xMm)
      return { bassMm: halfMm / Math.max(1 - taper * slant, 0.1), trebleMm: halfMm / Math.max(1 + taper * slant, 0.1) }
    },
    halfSpreadAtMm: (xMm) => (nutSpreadMm + ((saddleSpreadMm - nutSpreadMm) * (nutMm - xMm)) / scaleMm) / 2,
    radiusAtMm,
    dropMm: (xMm, yMm) => {
      const radiusMm = radiusAtMm(xMm)
      if (radiusMm === 'flat') return 0
      const y = Math.min(Math.abs(yMm), radiusMm)
      return (y * y) / (radiusMm + Math.sqrt(radiusMm * radiusMm - y * y))
    },
    fallOffMm: (xMm) =>
      overBodyMm > 0 && xMm < jointMm ? (board.fallOffMm * Math.min(jointMm - xMm, overBodyMm)) / overBodyMm : 0,
  }
}

/** The part of the scale that lies between a fret and the saddle line: 2^(-n/12). */
export const toSaddlePart = (fret: number): number => 2 ** (-fret / 12)

/** Where a line crosses a place across the board, from the tail. */
export const crossingMm = (line: CrossLine, yMm: number): number => line.xMm + line.slant * yMm
