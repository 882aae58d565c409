import { isPlainObject } from '../path.ts'
import type { Migration } from './migrate.ts'

/**
 * Version 5 knew no readings and no hours, and a stage was what its pattern says. The shop gets room for building orders of its own, empty; the
 * instruments stay as they are: a stage without anything of its own is still what its pattern says.
 */
export const ownOrders: Migration = {
  to: 6,
  name: 'own orders',
  row: (row) => {
    const { doc, kind } = row
    return kind === 'shop' && isPlainObject(doc) ? { ...row, doc: { ...doc, patterns: {} } } : row
  },
  change: (change) => change,
  fact: (fact) => fact,
}
