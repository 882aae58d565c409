import { TEMPLATE_NAMES, type TemplateName, type TemplateRef } from '../drawing/template/template.ts'

/** Papers about the whole instrument. */
export const WHOLE_PAPERS = ['specification', 'drawings', 'buyingList', 'label'] as const
export type WholePaper = (typeof WHOLE_PAPERS)[number]

/** A paper of one instrument by name, as it is kept in the record: `specification`, `stage:<id>`, `template:<name>:<of>`. */
export type PaperId = WholePaper | `stage:${string}` | `template:${TemplateName}:${string}`

export type PaperKind =
  | { readonly kind: 'whole'; readonly paper: WholePaper }
  | { readonly kind: 'stage'; readonly stageId: string }
  | { readonly kind: 'template'; readonly ref: TemplateRef }

export const stagePaper = (stageId: string): PaperId => `stage:${stageId}`
export const templatePaper = ({ name, of }: TemplateRef): PaperId => `template:${name}:${of ?? ''}`

/** What a name stands for; null: no paper of this program. */
export function parsePaperId(id: string): PaperKind | null {
  const whole = WHOLE_PAPERS.find((paper) => paper === id)
  if (whole !== undefined) return { kind: 'whole', paper: whole }
  const [kind, first, ...rest] = id.split(':')
  if (kind === 'stage' && first !== undefined && first !== '') return { kind: 'stage', stageId: first }
  const name = TEMPLATE_NAMES.find((one) => one === first)
  if (kind !== 'template' || name === undefined || rest.length === 0) return null
  const of = rest.join(':')
  return { kind: 'template', ref: { name, of: of === '' ? null : of } }
}
