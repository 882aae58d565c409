const FIRST_MM = 25
const APART_MM = 35

/** Where one more bolt goes, mm under the top plate: below the lowest, no deeper than `mostMm`. Common practice. */
export const nextBoltMm = (placesMm: readonly number[], mostMm: number): number =>
  placesMm.length === 0 ? FIRST_MM : Math.min(Math.max(...placesMm) + APART_MM, mostMm)
