/** What the shop's own gear adds round an outline when a mould, a bending form or a caul is sawn. Lengths in mm. */
export interface Jigs {
  /** Room between the outer face of the sides and an outside mould. */
  readonly mouldClearanceMm: number
  /** Thickness of the slat that bends with the side, on its inner face. */
  readonly slatMm: number
  /** Thickness of the heating blanket under the slat; 0 where the form is heated otherwise. */
  readonly blanketMm: number
  /** Room between the inner face of the sides and an inside caul. */
  readonly caulClearanceMm: number
}

/** Common practice, no published source: a mould that takes a shim, a steel slat, a silicone blanket, a caul with cork. */
export const USUAL_JIGS: Jigs = { mouldClearanceMm: 0.5, slatMm: 0.5, blanketMm: 1.5, caulClearanceMm: 1 }

export const FORM_LINES = ['mould', 'bendingForm', 'caul'] as const
export type FormLine = (typeof FORM_LINES)[number]

/**
 * How far inside the outer face of the sides a form's line runs, mm; negative outside it. Outside mould: the outer face and the clearance.
 * Bending form: inner face, less slat and blanket. Inside caul: inner face, less the clearance. Practice; the sums are derived.
 */
export function formInsetMm(line: FormLine, sideThicknessMm: number, jigs: Jigs): number {
  switch (line) {
    case 'mould':
      return -jigs.mouldClearanceMm
    case 'bendingForm':
      return sideThicknessMm + jigs.slatMm + jigs.blanketMm
    case 'caul':
      return sideThicknessMm + jigs.caulClearanceMm
  }
}
