import type { BoardPlan, FretsPlan } from '../../neckPlan.ts'
import { crossingMm, type Fretboard } from './fretboard.ts'

export interface BoardNumbers {
  readonly nutWidthMm: number
  readonly widthAtTwelfthMm: number
  readonly widthAtJointMm: number
  readonly widthAtEndMm: number
  /** From its farthest corner at the nut to its square end, along x. */
  readonly lengthMm: number
  /** The nut's ends at the board's edges before square across the nut's middle: toward the head; 'none' where the nut is square. */
  readonly nutBassAheadMm: number | 'none'
  readonly nutTrebleAheadMm: number | 'none'
  readonly nutToJointMm: number
  readonly overBodyMm: number
  /** At the crest, and at the edges at nut, joint and end. */
  readonly thicknessMm: number
  readonly edgeAtNutMm: number
  readonly edgeAtJointMm: number
  readonly edgeAtEndMm: number
  readonly slotDepthMm: number
  readonly slotWidthMm: number
  /** Depth of the shallowest slot at the board's edge: its bottom is straight. */
  readonly slotAtEdgeMm: number
  /** Room under a fret's tang at the shallowest slot; negative: it does not seat. */
  readonly underTangMm: number
  /** Wood under the slots. */
  readonly leftUnderSlotMm: number
  readonly fallOffMm: number
}

export interface MarkerRow {
  readonly fret: number
  /** On the centreline, midway between that fret and the one before. */
  readonly fromNutMm: number
  /** How far each of a pair stands from the centreline, at octaves; 'none' where there is one, on it. */
  readonly acrossMm: number | 'none'
}

/** Marks at the octaves stand in pairs. Common practice. */
const OCTAVE = 12

/**
 * The board at its nut, joint and end; every length mm.
 *
 *   edge = c - drop(w / 2)                        c thickness at the crest, w width there, drop the sagitta of the radius
 *   slot at the edge = d - drop(the slot's end)   d slot depth; the least of both ends of every slot, never under 0
 *
 *   nut's end before its middle = -k b on the bass side, k t on the treble side    k its slant, b and t how far across it leaves the board
 *
 * A slot's bottom is straight, so it is shallower where the board falls away; it ends the binding's thickness short of the edges, measured
 * along it. An edge that is gone, a slot deeper than the board and a board that ends before the joint come out negative. Derived.
 */
export function measureBoard(board: BoardPlan, frets: FretsPlan, shape: Fretboard): BoardNumbers {
  const { nutMm, jointMm, endMm } = shape
  const nut = shape.fretLine(0)
  const nutEnds = shape.endsOf(nut)
  const isSquare = nut.slant === 0
  const bassAheadMm = isSquare ? 0 : -nut.slant * nutEnds.bassMm
  const trebleAheadMm = isSquare ? 0 : nut.slant * nutEnds.trebleMm
  const widthAtMm = (xMm: number) => 2 * shape.halfWidthAtMm(xMm)
  const edgeAtMm = (xMm: number) => board.thicknessMm - shape.dropMm(xMm, shape.halfWidthAtMm(xMm))
  const slotsAtEdge = Array.from({ length: shape.lastFret }, (_, i) => shape.fretLine(i + 1)).flatMap((line) => {
    const { bassMm, trebleMm } = shape.endsOf(line)
    const bindingMm = board.bindingMm / Math.hypot(1, line.slant)
    return [Math.min(bindingMm - bassMm, 0), Math.max(trebleMm - bindingMm, 0)].map(
      (yMm) => frets.slotDepthMm - shape.dropMm(crossingMm(line, yMm), yMm),
    )
  })
  const slotAtEdgeMm = Math.max(Math.min(frets.slotDepthMm, ...slotsAtEdge), 0)
  return {
    nutWidthMm: board.nutWidthMm,
    widthAtTwelfthMm: board.widthAtTwelfthMm,
    widthAtJointMm: widthAtMm(jointMm),
    widthAtEndMm: widthAtMm(endMm),
    lengthMm: nutMm + Math.max(bassAheadMm, trebleAheadMm) - endMm,
    nutBassAheadMm: isSquare ? 'none' : bassAheadMm,
    nutTrebleAheadMm: isSquare ? 'none' : trebleAheadMm,
    nutToJointMm: nutMm - jointMm,
    overBodyMm: jointMm - endMm,
    thicknessMm: board.thicknessMm,
    edgeAtNutMm: edgeAtMm(nutMm),
    edgeAtJointMm: edgeAtMm(jointMm),
    edgeAtEndMm: edgeAtMm(endMm),
    slotDepthMm: frets.slotDepthMm,
    slotWidthMm: frets.slotWidthMm,
    slotAtEdgeMm,
    underTangMm: slotAtEdgeMm - frets.tangMm,
    leftUnderSlotMm: board.thicknessMm - frets.slotDepthMm,
    fallOffMm: board.fallOffMm,
  }
}

/** The marks of the board, by rising fret, each midway between its fret and the one before; marked frets it does not have are left out. */
export function markerRows({ markersAt }: BoardPlan, shape: Fretboard): readonly MarkerRow[] {
  const frets = [...new Set(markersAt)].filter((fret) => fret >= 1 && fret <= shape.lastFret).sort((a, b) => a - b)
  return frets.map((fret) => {
    const xMm = (shape.fretLine(fret - 1).xMm + shape.fretLine(fret).xMm) / 2
    return {
      fret,
      fromNutMm: shape.nutMm - xMm,
      acrossMm: fret % OCTAVE === 0 ? shape.halfWidthAtMm(xMm) / 2 : 'none',
    }
  })
}
