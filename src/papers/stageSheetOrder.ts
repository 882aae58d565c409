import type { Computed } from '../core/compute.ts'
import type { NumberKey } from '../core/numbers.ts'
import type { Drawing, DrawingName, EdgeMark, LabelWord, SeenFrom } from '../drawing/drawing.ts'
import type { CommissionDoc, ShopDoc } from '../record/commission.ts'
import type { PlannedNumbers } from '../record/bench/follows.ts'
import type { CautionKey } from '../record/patterns/cautions.ts'
import type { StageDrawing, StageKey } from '../record/patterns/stages.ts'
import type { CautionWords } from '../words/cautions.ts'
import type { NumberWords } from '../words/numbers/numberWords.ts'
import type { PaperWords } from '../words/paper.ts'
import type { StageWords } from '../words/stages/stageWords.ts'
import type { PaperSize } from './page.ts'
import type { StageThen } from './stageThen.ts'

/** What a stage sheet is made from. */
export interface StageSheetOrder {
  readonly doc: Pick<CommissionDoc, 'number' | 'title' | 'family' | 'brief' | 'tolerances' | 'stages'> & {
    readonly plan: {
      readonly rim: Pick<CommissionDoc['plan']['rim'], 'method'>
      readonly scale: Pick<CommissionDoc['plan']['scale'], 'jointFret'>
      readonly bridge: Pick<CommissionDoc['plan']['bridge'], 'compensation'>
      readonly strings: { readonly set: readonly { readonly note: number }[] }
    }
  }
  readonly computed: Pick<Computed, 'numbers' | 'findings'>
  /** The numbers as planned, and the fields that gave way to what was measured since; left out where nothing was. */
  readonly planned?: PlannedNumbers
  /** The stages to print, in building order. */
  readonly stages: readonly StageOnSheet[]
  /** How many stages the instrument has, printed or not. */
  readonly stagesTotal: number
  readonly shop: Pick<ShopDoc, 'units' | 'tolerances'>
  readonly paperSize: PaperSize
  readonly revisionCode: string
  /** The day of printing, ISO. */
  readonly dateIso: string
  /** null: this stage goes without. */
  readonly drawingOf: (drawing: StageDrawing) => Drawing | null
  readonly words: SheetWords
}

export interface StageOnSheet {
  readonly id: string
  readonly key: StageKey
  /** Its place in the instrument's building order, from 1. */
  readonly place: number
  readonly done: boolean
  /** Where it was signed off: as it stood then. Left out: it is printed as planned today. */
  readonly built?: StageThen
}

export interface SheetWords {
  readonly stages: Readonly<Record<StageKey, StageWords>>
  readonly cautions: Readonly<Record<CautionKey, CautionWords>>
  readonly numbers: Readonly<Record<NumberKey, NumberWords>>
  readonly paper: PaperWords
  readonly drawing: {
    readonly seenFrom: Readonly<Record<SeenFrom, string>>
    readonly shapes: Readonly<Record<EdgeMark | LabelWord, string>>
    readonly enlarged: (name: DrawingName, times: number) => string
  }
}
