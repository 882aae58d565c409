/** A length to the half millimetre: what a maker enters, and a hand places, no finer. */
export const halfMm = (mm: number): number => Math.round(mm * 2) / 2 + 0
