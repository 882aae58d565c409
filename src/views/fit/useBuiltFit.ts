import { useEffect, useMemo, useState } from 'react'
import type { NumberKey } from '../../core/numbers.ts'
import { effectiveTolerance, type Tolerances } from '../../papers/effectiveTolerance.ts'
import { type BuiltFit, type BuiltFits, createBuiltFits } from '../../state/builtFit.ts'
import { useSignedOffs } from '../signedOffs.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'

type ToleranceOf = (key: NumberKey) => number | null

/** What one workshop's sheets share: banner and list work nothing out twice. */
interface Shared {
  readonly fits: BuiltFits
  readonly toleranceOf: (own: Tolerances, shop: Tolerances) => ToleranceOf
}
const shared = new WeakMap<object, Shared>()

/** How long a hand that types is let go on before what is built is compared with it. */
const PAUSE_MS = 300

export function useBuiltFits(): Shared {
  const workshop = useWorkshop()
  const signedOffs = useSignedOffs()
  const known = shared.get(workshop)
  if (known !== undefined) return known
  const made = { fits: createBuiltFits({ build: workshop.build, signedOffs }), toleranceOf: createTolerances() }
  shared.set(workshop, made)
  return made
}

function createTolerances(): Shared['toleranceOf'] {
  let last: { readonly own: Tolerances; readonly shop: Tolerances; readonly of: ToleranceOf } | null = null
  return (own, shop) => {
    if (last?.own !== own || last.shop !== shop) last = { own, shop, of: (key) => effectiveTolerance(key, own, shop) }
    return last.of
  }
}

/** What is already built and no longer fits; null: nothing can have come to that. */
export function useBuiltFit(): BuiltFit | null {
  const { fits, toleranceOf } = useBuiltFits()
  const record = useCommission((state) => state.record)
  const changes = useCommission((state) => state.changes)
  const facts = useCommission((state) => state.facts)
  const shop = useShop((state) => state.shop.tolerances)
  return useMemo(
    () => (record === null ? null : fits.fitOf({ record, changes, facts }, toleranceOf(record.doc.tolerances, shop))),
    [fits, toleranceOf, record, changes, facts, shop],
  )
}

/** How many things no longer fit, said once the hand pauses: no key waits for it. */
export function useUnfitCount(): number {
  const { commission } = useWorkshop()
  const { fits, toleranceOf } = useBuiltFits()
  const record = useCommission((state) => state.record)
  const facts = useCommission((state) => state.facts)
  const shop = useShop((state) => state.shop.tolerances)
  const doc = record?.doc ?? null
  const [count, setCount] = useState(0)
  useEffect(() => {
    if (doc === null) return
    const timer = setTimeout(() => {
      const { record: now, changes } = commission.store.getState()
      setCount(fits.fitOf({ record: now, changes, facts }, toleranceOf(doc.tolerances, shop))?.count ?? 0)
    }, PAUSE_MS)
    return () => clearTimeout(timer)
  }, [commission, fits, toleranceOf, doc, facts, shop])
  return doc === null ? 0 : count
}
