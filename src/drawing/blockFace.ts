import type { Computed } from '../core/compute.ts'
import { insetPoint } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'

/** The face a block is glued with, as it lies in the body: from the bass end of the block to its treble end. */
export function blockFacePoints({ numbers, geometry }: Computed, end: 'tail' | 'neck'): Point[] {
  const { half } = geometry.outline
  const middle = insetPoint(half, end === 'tail' ? 0 : half.lengthMm, geometry.rimSite.sideThicknessMm)
  const away = end === 'tail' ? 1 : -1
  const treble = numbers.blocks[end].contour.map((row) => ({
    x: middle.x + away * row.fallsBackMm,
    y: row.acrossMm,
  }))
  const bass = treble.slice(1).map(({ x, y }) => ({ x, y: -y }))
  return [...bass.reverse(), ...treble]
}
