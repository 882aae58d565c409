import type { Computed } from '../core/compute.ts'
import { createSignedOffs, type SignedOffs } from '../state/signedOff.ts'
import { useWorkshop } from './workshop.ts'

const known = new WeakMap<object, SignedOffs<Computed>>()

/** What signed stages were built to: one for each workshop, so that no sheet looks up or works out again what another has. */
export function useSignedOffs(): SignedOffs<Computed> {
  const workshop = useWorkshop()
  const made = known.get(workshop) ?? createSignedOffs(workshop.build, () => workshop.commission.store.getState())
  known.set(workshop, made)
  return made
}
