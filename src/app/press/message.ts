import type { PaperId } from '../../papers/paperId.ts'
import type { PaperPrint } from '../../record/printed.ts'
import type { PressedFile, PressForm, PressOrder, PressProgress } from '../../views/press.ts'

/** What the screen asks of the press. */
export type PressJob =
  | { readonly kind: 'make'; readonly order: PressOrder; readonly papers: readonly PaperId[]; readonly form: PressForm }
  | { readonly kind: 'marks'; readonly order: PressOrder; readonly papers: readonly string[] }

/** What the press answers, in the order it happens: the last is the marks of what was made or asked about, or that it could not. */
export type PressAnswer =
  | ({ readonly kind: 'progress' } & PressProgress)
  | { readonly kind: 'file'; readonly file: PressedFile }
  | { readonly kind: 'marks'; readonly prints: readonly PaperPrint[] }
  | { readonly kind: 'failed' }
