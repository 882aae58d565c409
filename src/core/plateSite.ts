import type { PlateSide } from './boxPlan.ts'
import type { Computed } from './compute.ts'
import type { ConvexPolygon } from './geometry/convexPolygon.ts'
import { innerRimOf } from './instrument/brace/innerRim.ts'
import type { PlateSite } from './instrument/brace/nextPlateBrace.ts'
import type { Plan } from './plan.ts'

const box = (fromMm: number, toMm: number, widthMm: number): ConvexPolygon => [
  { x: fromMm, y: -widthMm / 2 },
  { x: toMm, y: -widthMm / 2 },
  { x: toMm, y: widthMm / 2 },
  { x: fromMm, y: widthMm / 2 },
]

/** What lies on the inside of a plate by now: what a new brace is put clear of. */
export function plateSiteOf(plate: PlateSide, { blocks, rim, soundhole }: Plan, { geometry }: Computed): PlateSite {
  const { outline, lengthMm, rimSite, bracing } = geometry
  const isTop = plate === 'top'
  const { tail, neck } = blocks
  return {
    lengthMm,
    rim: innerRimOf(outline, rimSite.sideThicknessMm),
    placed: bracing.placed.filter((brace) => brace.plan.plate === plate && brace.lengthMm > 0),
    keepClear: [
      box(0, rim.sideThicknessMm + tail.thicknessMm, tail.widthMm),
      box(lengthMm - rim.sideThicknessMm - neck.thicknessMm, lengthMm, neck.widthMm),
      ...(isTop && bracing.bridgePlate !== null ? [bracing.bridgePlate] : []),
    ],
    hole: isTop ? { centreMm: soundhole.centreMm, radiusMm: soundhole.radiusMm } : null,
  }
}
