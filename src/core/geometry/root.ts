/**
 * A root of f between a and b, where f changes sign, within `tolerance` of the true place.
 *
 * Without a change of sign the end with the smaller |f| is given. Bounded by a count of 100 steps.
 * Source: Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (method; code our own).
 */
export function findRoot(f: (t: number) => number, a: number, b: number, tolerance = 1e-12): number {
  let fa = f(a)
  let fb = f(b)
  if (fa === 0) return a
  if (fb === 0) return b
  if (fa > 0 === fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b
  let c = a
  let fc = fa
  let step = b - a
  let before = step
  for (let count = 0; count < 100; count++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      ;[a, b, c] = [b, c, b]
      ;[fa, fb, fc] = [fb, fc, fb]
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= near || fb === 0) return b
    if (Math.abs(before) >= near && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa
      let p: number
      let q: number
      if (a === c) {
        p = 2 * half * s
        q = 1 - s
      } else {
        const u = fa / fc
        const r = fb / fc
        p = s * (2 * half * u * (u - r) - (b - a) * (r - 1))
        q = (u - 1) * (r - 1) * (s - 1)
      }
      if (p > 0) q = -q
      p = Math.abs(p)
      if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(before * q))) {
        before = step
        step = p / q
      } else {
        step = half
        before = half
      }
    } else {
      step = half
      before = half
    }
    a = b
    fa = fb
    b += Math.abs(step) > near ? step : near * Math.sign(half)
    fb = f(b)
    if (fb > 0 === fc > 0) {
      c = a
      fc = fa
      step = b - a
      before = step
    }
  }
  return b
}
