import { isPlainObject } from '../path.ts'
import type { Migration } from './migrate.ts'

/**
 * Version 4 printed nothing at full size. What is added is the shop's: common practice for its forms, no published source, and a printer that
 * is true. No instrument changes.
 */
export const fullSize: Migration = {
  to: 5,
  name: 'full size',
  row: (row) => {
    const { doc, kind } = row
    return kind === 'shop' && isPlainObject(doc) ? { ...row, doc: { ...doc, ...ADDED } } : row
  },
  change: (change) => change,
  fact: (fact) => fact,
}

const ADDED = {
  jigs: { mouldClearanceMm: 0.5, slatMm: 0.5, blanketMm: 1.5, caulClearanceMm: 1 },
  printing: { sheet: 'A4', rollWidthMm: 914, overlapMm: 10, boxAcrossMm: 100, boxAlongMm: 100 },
}
