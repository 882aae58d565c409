import { createContext, useContext } from 'react'
import type { StageState } from '../../record/bench/stageStates.ts'
import type { StageChange } from '../../record/changes/stages.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import type { StageInHand } from '../../record/stageInHand.ts'

/** What every part of the place of stages works on. */
export interface OrderBench {
  readonly docId: string
  readonly doc: CommissionDoc
  readonly stages: readonly StageInHand[]
  readonly stateOf: (id: string) => StageState
  readonly titleOf: (id: string) => string
  readonly isLocked: boolean
  /** Makes a change, or says why it is not made. */
  readonly change: (change: StageChange, gesture?: string) => void
  /** Signs a stage off with the numbers it stands at. */
  readonly signOff: (id: string) => void
}

export const OrderBenchContext = createContext<OrderBench | null>(null)

export function useOrderBench(): OrderBench {
  const bench = useContext(OrderBenchContext)
  if (bench === null) throw new Error('a part of the stages stands outside of them')
  return bench
}
