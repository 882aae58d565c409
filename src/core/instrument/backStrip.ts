import type { Figure } from '../figure.ts'
import { integrate } from '../geometry/quadrature.ts'
import type { Surface } from '../geometry/surface.ts'

/** The strip let into the back's joint on the outside; 'none' where there is none. Lengths in mm. */
export interface BackStripNumbers {
  /** Of its channel in the outer face of the back. */
  readonly widthMm: Figure
  readonly downMm: Figure
  /** From binding to binding on the outer face of the back: straight across, and along the dome. */
  readonly chordMm: Figure
  readonly arcMm: Figure
  readonly cutMm: Figure
  /** What its channel leaves of the back; negative where it goes through. */
  readonly leftMm: Figure
}

export interface BackStripSite {
  /** The inside of the back. */
  readonly back: Surface
  readonly lengthMm: number
  readonly plateMm: number
  readonly bindingThicknessMm: number
  readonly widthMm: number
  readonly depthMm: number
  readonly trimMm: number
}

const PARTS = 4
const NO_STRIP: BackStripNumbers = {
  widthMm: 'none',
  downMm: 'none',
  chordMm: 'none',
  arcMm: 'none',
  cutMm: 'none',
  leftMm: 'none',
}

/**
 * Along the centreline from one binding thickness inside the tail to the same inside the neck, on the outer face: the parallel of the back's
 * inside at the plate's thickness t, so its length is that of the inside and t x the angle between the two ends. Nothing is left of a body
 * shorter than its bindings. Source: derived.
 */
export function measureBackStrip(site: BackStripSite): BackStripNumbers {
  if (site.widthMm <= 0) return NO_STRIP
  const fromMm = Math.min(site.bindingThicknessMm, site.lengthMm / 2)
  const toMm = site.lengthMm - fromMm
  const slope = (x: number) => site.back.slope(x, 0).x
  const outside = (x: number) => {
    const leanRad = Math.atan(slope(x))
    return {
      x: x + site.plateMm * Math.sin(leanRad),
      z: site.back.heightMm(x, 0) - site.plateMm * Math.cos(leanRad),
      leanRad,
    }
  }
  const [tail, neck] = [outside(fromMm), outside(toMm)]
  const partMm = (toMm - fromMm) / PARTS
  let insideMm = 0
  for (let i = 0; i < PARTS; i++)
    insideMm += integrate((x) => Math.hypot(1, slope(x)), fromMm + i * partMm, fromMm + (i + 1) * partMm)
  const arcMm = insideMm + site.plateMm * (neck.leanRad - tail.leanRad)
  return {
    widthMm: site.widthMm,
    downMm: site.depthMm,
    chordMm: Math.hypot(neck.x - tail.x, neck.z - tail.z),
    arcMm,
    cutMm: arcMm + 2 * site.trimMm,
    leftMm: site.plateMm - site.depthMm,
  }
}
