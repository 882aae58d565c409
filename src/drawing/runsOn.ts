import type { Computed } from '../core/compute.ts'
import { label, outside } from './dimension.ts'
import type { Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { drawn, through } from './line.ts'

const PARTS = 2

/**
 * The bass blank of a cutaway runs on past the neck centre, along the joint to the cut: places along the blank, and the width from its
 * straight edge to the line to saw there. Nothing without a cutaway.
 */
export function widthsRunningOn({ numbers, geometry }: Computed): { alongMm: number; cutWidthMm: number }[] {
  const { runsOnMm } = numbers.cutaway
  if (typeof runsOnMm !== 'number' || runsOnMm <= 0) return []
  const { back, referenceMm, backAllowanceMm } = geometry.rimSite
  const fromMm = numbers.rim.at(-1)!.alongBlankMm
  return Array.from({ length: PARTS }, (_, i) => {
    const pastMm = (runsOnMm * (i + 1)) / PARTS
    return {
      alongMm: fromMm + pastMm,
      cutWidthMm: referenceMm - back.heightMm(geometry.lengthMm, pastMm) + backAllowanceMm,
    }
  })
}

/** The neck centre on that blank, and how far it runs on. */
export function runsOnShapes(
  { numbers }: Computed,
  place: (along: number) => number,
  widthMm: number,
  lanesFree: number,
): Shape[] {
  const { runsOnMm } = numbers.cutaway
  if (typeof runsOnMm !== 'number' || runsOnMm <= 0) return []
  const alongMm = numbers.rim.at(-1)!.alongBlankMm
  const x = place(alongMm)
  return [
    drawn(
      'centre',
      through([
        { x, y: 0 },
        { x, y: widthMm },
      ]),
    ),
    label('neckCentre', { x, y: widthMm * 0.3 }, { x: -1, y: 0 }),
    outside(
      figured(numbers, 'cutaway.runsOnMm'),
      'below',
      widthMm,
      { x, y: widthMm },
      { x: place(alongMm + runsOnMm), y: widthMm },
      lanesFree,
    ),
  ]
}
