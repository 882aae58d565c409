import type { Curve } from '../geometry/curve.ts'
import { TWO_POINTS } from '../geometry/quadrature.ts'
import type { Surface } from '../geometry/surface.ts'
import { walkInset } from '../geometry/walkInset.ts'
import type { TopCrease } from './topCrease.ts'

export interface BoxSite {
  /** Outer faces, both with their own half-width upward. */
  readonly bass: Curve
  readonly treble: Curve
  readonly sideThicknessMm: number
  /** Inner faces of the plates: rim edges are where these are glued. */
  readonly top: Surface
  readonly back: Surface
  readonly crease: TopCrease
}

export interface Inside {
  readonly volumeMm3: number
  /** In plan, within the inner face of the sides. */
  readonly areaMm2: number
}

/**
 * The empty box: between the inner faces of top and back, within the inner face of both sides. By Green's theorem along that face,
 *
 *   V = integral of F(x, y) dx,   F(x, y) = integral of (top - back) across, from the centreline to y
 *
 * F by a two-point rule, exact for an arch that is a parabola across, split where the top breaks. Within 1e-5 of the whole for domes
 * that can be built; negative where the back stands over the top. Source: derived.
 */
export function insideOfBox(site: BoxSite): Inside {
  const bass = underHalf(site.bass, site)
  const treble = site.treble === site.bass ? bass : underHalf(site.treble, site)
  return { volumeMm3: bass.volumeMm3 + treble.volumeMm3, areaMm2: bass.areaMm2 + treble.areaMm2 }
}

function underHalf(half: Curve, { sideThicknessMm, top, back, crease }: BoxSite): Inside {
  let volumeMm3 = 0
  let areaMm2 = 0
  const across = (x: number, from: number, to: number) => {
    let sum = 0
    for (const { at, weight } of TWO_POINTS) {
      const y = from + at * (to - from)
      sum += weight * (top.heightMm(x, y) - back.heightMm(x, y))
    }
    return sum * (to - from)
  }
  for (const { x, y, dx } of walkInset(half, sideThicknessMm, crease.breaksAtXMm)) {
    const creaseMm = crease.halfWidthAtMm(x)
    const isSplit = creaseMm > 0 && creaseMm < y
    volumeMm3 += dx * (isSplit ? across(x, 0, creaseMm) + across(x, creaseMm, y) : across(x, 0, y))
    areaMm2 += dx * y
  }
  return { volumeMm3, areaMm2 }
}
