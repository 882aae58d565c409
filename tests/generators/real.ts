import fc from 'fast-check'

/**
 * A real number anywhere from min to max, both included, spread evenly. (A generator of doubles picks among their bit patterns, most of which
 * lie next to nothing, so that a range across 0 is hardly ever tried at its ends.)
 */
export const real = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((i) => min + ((max - min) * i) / 1_000_000)
