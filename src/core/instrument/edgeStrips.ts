import type { PlateSide } from '../boxPlan.ts'
import type { Figure } from '../figure.ts'
import { sidePieces, upToMm } from './cutaway.ts'
import { insidePiecesMm, type SideRun } from './lining.ts'

/** Binding and purfling of one edge of one half, or of one piece of it where sharp corners break the half. 'none' where there is no such strip. */
export interface EdgeStripRow {
  readonly half: 'bass' | 'treble'
  readonly plate: PlateSide
  /** From tail to joint, or to the mitres: in the middle of the strip's own thickness. */
  readonly bindingMm: Figure
  readonly bindingCutMm: Figure
  readonly purflingMm: Figure
  readonly purflingCutMm: Figure
  /** To cut its end toward the neck to, from square; the next piece is cut to the same. 'none' for the last. */
  readonly mitreRad: Figure
}

export interface EdgeStripSite {
  readonly bass: SideRun
  readonly treble: SideRun
  /** What the bass half runs on past the centreline, beside a cutaway. */
  readonly bassRunsOnMm: number
  readonly bindingThicknessMm: number
  readonly purflingMm: { readonly [plate in PlateSide]: number }
  readonly trimMm: number
}

/**
 * Every piece to cut, bass half first, from the tail. A strip keeps its length in the middle of its thickness: along the parallel of the outer
 * face there, s - inset x turning, less inset x tan(turn / 2) at a mitre; with the trim at both ends. The mitre is half the corner's turn.
 * Lengths in plan: what the edge climbs is under a millimetre on a whole half, and trim takes it up. Source: derived.
 */
export function edgeStripRows(site: EdgeStripSite): EdgeStripRow[] {
  const isMirrored = site.treble.curve === site.bass.curve && site.treble.woodEndMm === site.bass.woodEndMm
  const bass = halfRows(site, 'bass')
  return [
    ...bass,
    ...(isMirrored ? bass.map((row) => ({ ...row, half: 'treble' as const })) : halfRows(site, 'treble')),
  ]
}

function halfRows(site: EdgeStripSite, half: 'bass' | 'treble'): EdgeStripRow[] {
  const run = site[half]
  const mitresRad = mitres(run)
  const runsOnMm = half === 'bass' ? site.bassRunsOnMm : 0
  const along = (insetMm: number) => {
    const lengths = insidePiecesMm(run, insetMm)
    return lengths.map((mm, i) => (i === lengths.length - 1 ? mm + runsOnMm : mm))
  }
  const bindings = site.bindingThicknessMm > 0 ? along(site.bindingThicknessMm / 2) : []
  const withTrim = (mm: Figure): Figure => (typeof mm === 'number' ? mm + 2 * site.trimMm : mm)
  return (['top', 'back'] as const).flatMap((plate) => {
    const widthMm = site.purflingMm[plate]
    const purflings = widthMm > 0 ? along(site.bindingThicknessMm + widthMm / 2) : []
    return mitresRad.map((mitreRad, i): EdgeStripRow => {
      const bindingMm = bindings[i] ?? 'none'
      const purflingMm = purflings[i] ?? 'none'
      return {
        half,
        plate,
        bindingMm,
        bindingCutMm: withTrim(bindingMm),
        purflingMm,
        purflingCutMm: withTrim(purflingMm),
        mitreRad,
      }
    })
  })
}

/** For each piece of a half, half the turn of the corner at its end. */
function mitres({ curve, woodEndMm }: SideRun): Figure[] {
  const wood = upToMm(curve, woodEndMm)
  const pieces = sidePieces(wood, wood.lengthMm)
  return pieces.map(({ toMm }, i) => {
    if (i === pieces.length - 1) return 'none'
    return Math.abs(wood.corners.reduce((sum, { sMm, turnRad }) => sum + (sMm === toMm ? turnRad : 0), 0)) / 2
  })
}

/** The sum of what is there; 'none' where nothing is. */
export function sumOf(lengths: readonly Figure[]): Figure {
  const there = lengths.filter((mm) => typeof mm === 'number')
  return there.length === 0 ? 'none' : there.reduce((sum, mm) => sum + mm, 0)
}

/**
 * The tightest bend of the binding, on the face the bending iron touches: its inner face where the outline is round, radius less thickness;
 * its outer face where it is hollow. `atMm` round the outside from the tail. Held at 0 where the binding is thicker than the radius; null
 * where all is straight or there is no binding. Source: derived.
 */
export function tightestBindingBend(
  runs: readonly SideRun[],
  thicknessMm: number,
): { radiusMm: number; atMm: number } | null {
  if (thicknessMm <= 0) return null
  let tightest: { radiusMm: number; atMm: number } | null = null
  const look = (perMm: number, atMm: number) => {
    if (Math.abs(perMm) < 1e-9) return
    const radiusMm = perMm > 0 ? Math.max(1 / perMm - thicknessMm, 0) : -1 / perMm
    if (tightest === null || radiusMm < tightest.radiusMm - 1e-9) tightest = { radiusMm, atMm }
  }
  for (const { curve, woodEndMm } of runs)
    curve.pieces.forEach(({ lengthMm, startCurvaturePerMm: from, endCurvaturePerMm: to }, i) => {
      const startMm = curve.startsMm[i]!
      if (lengthMm < 1e-6 || startMm > woodEndMm - 1e-6) return
      // Curvature is linear along a piece: the tightest bend of either way is at one of its ends. Of an arc its middle is named.
      if (from === to) look(from, startMm + lengthMm / 2)
      else {
        look(from, startMm)
        look(to, startMm + lengthMm)
      }
    })
  return tightest
}
