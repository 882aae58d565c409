import { createContext, useContext } from 'react'
import type { Plan } from '../core/plan.ts'
import type { PaperId } from '../papers/paperId.ts'
import type { CommissionDoc, ShopDoc } from '../record/commission.ts'
import type { PlannedNumbers } from '../record/bench/follows.ts'
import type { PaperPrint } from '../record/printed.ts'
import type { SignedOff } from '../state/signedOff.ts'

/** What papers are made from: the record as it stands, and the day. */
export interface PressOrder {
  /** With its plan as built. */
  readonly doc: CommissionDoc
  /** The code of the record the papers show. */
  readonly revision: string
  readonly shop: ShopDoc
  /** Ids of the stages signed off. */
  readonly doneStages: readonly string[]
  /** What signed stages were built to: their sheets show that, whatever the plan has become. */
  readonly signed?: readonly SignedOff[]
  /** The plan as it was drawn, and the fields that gave way to what was measured; left out where nothing was. */
  readonly planned?: { readonly plan: Plan; readonly taken: PlannedNumbers['taken'] }
  readonly dateIso: string
}

/** In which form papers leave: one PDF, a zip of them with the cutting files, or one template as a drawing file. */
export const PRESS_FORMS = ['pdf', 'zip', 'svg', 'dxfSplines', 'dxfPolylines'] as const
export type PressForm = (typeof PRESS_FORMS)[number]

export interface PressedFile {
  readonly name: string
  readonly mime: string
  readonly bytes: Uint8Array<ArrayBuffer>
}

export interface PressProgress {
  readonly done: number
  readonly of: number
  /** The paper in hand. */
  readonly paper: PaperId
}

/** Work under way, and the way out of it. */
export interface PressRun<Answer> {
  /** null: it was called off. */
  readonly answer: Promise<Answer | null>
  readonly cancel: () => void
}

/** Papers under way: the file first, then the marks of what it shows, which the record keeps. */
export interface PressMake extends PressRun<PressedFile> {
  readonly prints: Promise<readonly PaperPrint[] | null>
}

/** Makes papers beside the screen, which stays free. Nothing of it is fetched before the first order. */
export interface Press {
  readonly make: (
    order: PressOrder,
    papers: readonly PaperId[],
    form: PressForm,
    onProgress: (progress: PressProgress) => void,
  ) => PressMake
  /** What papers show now, each as a short mark; those that no longer exist are left out. */
  readonly marks: (order: PressOrder, papers: readonly string[]) => PressRun<readonly PaperPrint[]>
}

export const PressContext = createContext<Press | null>(null)

export function usePress(): Press {
  const press = useContext(PressContext)
  if (press === null) throw new Error('no press stands here')
  return press
}
