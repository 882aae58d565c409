import type { Computed } from '../core/compute.ts'
import { createHooks } from '../state/hooks.ts'

/** The workshop as views see it: what they read from, and what they ask for. */
export const {
  WorkshopProvider,
  useWorkshop,
  useCommission,
  useList,
  useModels,
  useShop,
  useImport,
  usePersistence,
  useTimers,
  useOffline,
  useDraft,
} = createHooks<Computed>()
