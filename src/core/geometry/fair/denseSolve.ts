/**
 * Lower triangular G with G Gt = A, written over A's lower triangle (row by row, n x n); false where A is not positive definite.
 * A zero or negative pivot, or one lost in rounding beside its diagonal entry, counts as not positive.
 *
 * Source: Cholesky's method, as in Golub & Van Loan, Matrix Computations, section 4.2 (from memory).
 */
export function factorPositive(a: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const row = i * n
    const diagonal = a[row + i]!
    for (let j = 0; j <= i; j++) {
      const other = j * n
      let sum = a[row + j]!
      for (let k = 0; k < j; k++) sum -= a[row + k]! * a[other + k]!
      if (j < i) a[row + j] = sum / a[other + j]!
      else if (sum > Math.abs(diagonal) * 1e-14) a[row + i] = Math.sqrt(sum)
      else return false
    }
  }
  return true
}

/** Writes over b the solution of G y = b, for a factor G of `factorPositive`. */
export function solveLower(g: Float64Array, n: number, b: Float64Array, from = 0): void {
  for (let i = 0; i < n; i++) {
    let sum = b[from + i]!
    for (let k = 0; k < i; k++) sum -= g[i * n + k]! * b[from + k]!
    b[from + i] = sum / g[i * n + i]!
  }
}

/** Writes over y the solution of Gt x = y, for a factor G of `factorPositive`. */
export function solveUpper(g: Float64Array, n: number, y: Float64Array, from = 0): void {
  for (let i = n - 1; i >= 0; i--) {
    const x = y[from + i]! / g[i * n + i]!
    y[from + i] = x
    for (let k = 0; k < i; k++) y[from + k]! -= g[i * n + k]! * x
  }
}
