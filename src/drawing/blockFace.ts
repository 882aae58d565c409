import type { Computed } from '../core/compute.ts'
import { insetPoint } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import type { BlockNumbers, ContourRow } from '../core/instrument/block.ts'

/** The glue face as far as it goes to the treble side, from the middle: where a cutaway comes in it ends there. */
export function trebleContour({ contour, trebleReachMm }: BlockNumbers): ContourRow[] {
  const last = contour.at(-1)
  if (last === undefined || trebleReachMm >= last.acrossMm) return [...contour]
  const before = contour.filter(({ acrossMm }) => acrossMm < trebleReachMm)
  const [a, b] = [before.at(-1), contour[before.length]]
  if (a === undefined || b === undefined) return contour.slice(0, 1)
  const part = (trebleReachMm - a.acrossMm) / (b.acrossMm - a.acrossMm)
  return [...before, { acrossMm: trebleReachMm, fallsBackMm: a.fallsBackMm + part * (b.fallsBackMm - a.fallsBackMm) }]
}

/** A place on a block seen from above: how far from its glue face, and across, positive to the treble side. */
export interface BlockPlace {
  readonly fromFaceMm: number
  readonly acrossMm: number
}

/**
 * The treble flank of a block from its glue face inward, `beyondMm` behind the middle of that face at the earliest: square to the joint,
 * or along the inner face of a cutaway's side where that comes in further than the block is wide.
 */
export function trebleFlank(block: BlockNumbers, beyondMm: number): BlockPlace[] {
  const halfMm = block.contour.at(-1)?.acrossMm ?? 0
  const along = block.flank
    .filter(({ fromFaceMm }) => fromFaceMm > beyondMm && fromFaceMm < block.thicknessMm - 1e-6)
    .map(({ fromFaceMm, acrossMm }) => ({ fromFaceMm, acrossMm: Math.min(acrossMm, halfMm) }))
  const insideMm = Math.min(block.flank.at(-1)?.acrossMm ?? halfMm, halfMm)
  return [...along, { fromFaceMm: block.thicknessMm, acrossMm: insideMm }]
}

/** A block as it lies in the body, seen from the front: its glue face from the bass end to the treble one, its flank, its inside face. */
export function blockPoints({ numbers, geometry }: Computed, end: 'tail' | 'neck'): Point[] {
  const { bass } = geometry.outline
  const block = numbers.blocks[end]
  const middle = insetPoint(bass, end === 'tail' ? 0 : bass.lengthMm, geometry.rimSite.sideThicknessMm)
  const away = end === 'tail' ? 1 : -1
  const place = ({ fromFaceMm, acrossMm }: BlockPlace): Point => ({ x: middle.x + away * fromFaceMm, y: acrossMm })
  const face = (rows: readonly ContourRow[]) =>
    rows.map(({ fallsBackMm, acrossMm }) => place({ fromFaceMm: fallsBackMm, acrossMm }))
  const bassFace = face(block.contour)
    .slice(1)
    .map(({ x, y }) => ({ x, y: -y }))
    .reverse()
  const treble = trebleContour(block)
  const flank = trebleFlank(block, treble.at(-1)?.fallsBackMm ?? 0).map(place)
  const bassEnd = bassFace[0]?.y ?? 0
  return [
    ...bassFace,
    ...face(treble),
    ...flank,
    { x: place({ fromFaceMm: block.thicknessMm, acrossMm: 0 }).x, y: bassEnd },
  ]
}
