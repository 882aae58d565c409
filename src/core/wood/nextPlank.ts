import type { Plan } from '../plan.ts'

type PlankPlan = Plan['cutting']['planks'][string]

/** A plank to begin with: as large as the last one, for racks hold boards of a kind; the first is a short board of two inches. Common practice. */
export function nextPlank(last: PlankPlan | undefined): Omit<PlankPlan, 'order'> {
  const { role, lengthMm, widthMm, thicknessMm } = last ?? FIRST
  return { role, lengthMm, widthMm, thicknessMm }
}

const FIRST = { role: 'top', lengthMm: 600, widthMm: 220, thicknessMm: 50 } as const
