import type { HalfName } from '../innerFace.ts'

/** Which side a template is of, and which piece of its wood, counted from 0 at the tail. */
export interface SideOf {
  readonly side: HalfName
  readonly piece: number
}

/** How the pieces of a side are told apart: treble, treble2, treble3. */
export const sideRef = (side: HalfName, piece: number): string => (piece === 0 ? side : `${side}${piece + 1}`)

/** The side behind such a name; the bass side where it is none. */
export function sideOf(of: string | null): SideOf {
  const [, side, number] = /^(bass|treble)(\d*)$/.exec(of ?? '') ?? []
  return {
    side: side === 'treble' ? 'treble' : 'bass',
    piece: Math.max(Number(number === '' ? 1 : (number ?? 1)) - 1, 0),
  }
}
