import type { SolvedValues } from '../../core/instrument/solvedValues.ts'
import type { OutlinePiece } from '../../core/plan.ts'

type Pieces = readonly OutlinePiece[]

/** The first piece of an empty outline: a round arc whose radius is solved, so that it closes at once. */
const FIRST: OutlinePiece = { kind: 'arc', bend: 'convex', radiusMm: null, sweepDeg: 180 }

/** A piece of no length before `at`, bent like its neighbour, so that the outline stays as it is until it is given a sweep. */
export function insertPiece(pieces: Pieces, at: number, solved: readonly SolvedValues[]): Pieces {
  const beside = at > 0 ? at - 1 : 0
  const neighbour = pieces[beside]
  if (neighbour === undefined) return [FIRST]
  const radius = solved[beside]?.radiusMm
  const fresh: OutlinePiece =
    neighbour.kind === 'arc'
      ? { ...neighbour, radiusMm: neighbour.radiusMm ?? (typeof radius === 'number' ? radius : null), sweepDeg: 0 }
      : { kind: 'straight', lengthMm: 0 }
  return pieces.toSpliced(at, 0, fresh)
}

export const removePiece = (pieces: Pieces, at: number): Pieces => pieces.toSpliced(at, 1)

/** Swaps a piece with the one before or after it; at the ends nothing moves. */
export function movePiece(pieces: Pieces, at: number, to: number): Pieces {
  const piece = pieces[at]
  if (piece === undefined || to < 0 || to >= pieces.length) return pieces
  return pieces.toSpliced(at, 1).toSpliced(to, 0, piece)
}

/** Makes an arc straight or a straight bent: the straight keeps the length the arc had, the arc leaves its sweep open. */
export function turnPieceInto(
  pieces: Pieces,
  at: number,
  kind: OutlinePiece['kind'],
  solved: SolvedValues | undefined,
): Pieces {
  if (pieces[at]?.kind === kind) return pieces
  const fresh: OutlinePiece =
    kind === 'straight'
      ? { kind, lengthMm: solved?.lengthMm ?? null }
      : { kind, bend: 'convex', radiusMm: 1000, sweepDeg: null }
  return pieces.with(at, fresh)
}

/** Sets one value of a piece; what its kind does not have is left out. */
export function changePiece(
  pieces: Pieces,
  at: number,
  values: Partial<Extract<OutlinePiece, { kind: 'arc' }>> | Partial<Extract<OutlinePiece, { kind: 'straight' }>>,
): Pieces {
  const piece = pieces[at]
  return piece === undefined ? pieces : pieces.with(at, { ...piece, ...values } as OutlinePiece)
}
