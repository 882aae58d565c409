import type { BracePlan, PlateSide } from '../../boxPlan.ts'

/** Part of the body's length from the tail at which a new brace stands, so that it is seen at once and dragged from there. */
const PART = 0.45

/** A brace to start from: across from rim to rim, of a section that suits the size of the body. Common practice, no published source. */
export function nextPlateBrace(plate: PlateSide, bodyLengthMm: number): Omit<BracePlan, 'order'> {
  const growth = Math.min(Math.max(bodyLengthMm / 490, 0.5), 1.3)
  const half = (mm: number) => Math.round(mm * growth * 2) / 2
  const end = (side: 'bass' | 'treble'): BracePlan['from'] => ({
    stops: 'rimAt',
    side,
    xMm: Math.round(bodyLengthMm * PART),
    yMm: 0,
    braceId: null,
    letInMm: half(2.5),
    taper: 'scoop',
    taperMm: half(40),
    endHeightMm: half(2.5),
  })
  return {
    plate,
    kind: 'other',
    twin: false,
    from: end('bass'),
    to: end('treble'),
    widthMm: half(8),
    heightMm: half(13),
    underside: 'dome',
    archRadiusMm: plate === 'top' ? 8000 : 4500,
    lapped: false,
  }
}
