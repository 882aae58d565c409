import { sagittaMm } from '../geometry/sagitta.ts'

export interface DishGap {
  readonly gapMm: number
  readonly opens: 'middle' | 'rim' | 'nowhere'
  /** Whether the whole span lies in the dish. */
  readonly isWideEnough: boolean
}

/** Less than this is no gap at all, mm. */
const CLOSED_MM = 1e-6

/**
 * The largest gap a dome of the wanted radius leaves in a dish of another, over a span across it, mm: the difference of the two
 * sagittas. A rounder dish touches at the rim and stands off in the middle; a flatter one touches in the middle.
 *
 * A span beyond a diameter of either sphere is taken as that diameter. Source: derived, from Pythagoras on the section through the axis.
 */
export function dishGap(
  wantedRadiusMm: number,
  dish: { readonly radiusMm: number; readonly diameterMm: number },
  spanMm: number,
): DishGap {
  const overMm = sagittaMm(dish.radiusMm, spanMm) - sagittaMm(wantedRadiusMm, spanMm)
  const gapMm = Math.abs(overMm)
  return {
    gapMm,
    opens: gapMm < CLOSED_MM ? 'nowhere' : overMm > 0 ? 'middle' : 'rim',
    isWideEnough: dish.diameterMm >= spanMm,
  }
}
