import type { TemplateName, TemplateRef } from '../../drawing/template/template.ts'
import { templatePaper } from '../../papers/paperId.ts'
import { FULL_SIZE_VIEW_WORDS } from '../../words/press.ts'

type Part = 'body' | 'box' | 'neck'

/** Where on the instrument each template belongs. */
const PART_OF: Readonly<Record<TemplateName, Part>> = {
  outlineHalf: 'body',
  outlineWhole: 'body',
  mould: 'body',
  bendingForm: 'body',
  caul: 'body',
  sideBlank: 'body',
  contourBoard: 'body',
  dishArch: 'body',
  rosettePlan: 'body',
  bracingPlan: 'box',
  braceArch: 'box',
  bindingGauge: 'box',
  fretboardPlan: 'neck',
  slottingRuler: 'neck',
  bridgeGauge: 'neck',
  neckSetGauge: 'neck',
}
export const TEMPLATE_PARTS = ['body', 'box', 'neck'] as const satisfies readonly Part[]

/** Templates in the order they are reached for, by the part of the instrument. */
export const templatesOfPart = (refs: readonly TemplateRef[], part: Part): readonly TemplateRef[] =>
  refs.filter(({ name }) => PART_OF[name] === part)

/** Every template of the instrument; one of them is in hand. */
export function TemplateList({
  refs,
  chosen,
  nameOf,
  onChoose,
}: {
  readonly refs: readonly TemplateRef[]
  readonly chosen: TemplateRef
  readonly nameOf: (ref: TemplateRef) => string
  readonly onChoose: (ref: TemplateRef) => void
}) {
  const { parts, templates } = FULL_SIZE_VIEW_WORDS
  return (
    <nav className="template-list" aria-label={templates}>
      {TEMPLATE_PARTS.map((part) => {
        const here = templatesOfPart(refs, part)
        return (
          here.length > 0 && (
            <section key={part} aria-label={parts[part]}>
              <h2 className="second small">{parts[part]}</h2>
              <ul>
                {here.map((ref) => (
                  <li key={templatePaper(ref)}>
                    <button
                      type="button"
                      className="template-pick"
                      aria-pressed={templatePaper(ref) === templatePaper(chosen)}
                      onClick={() => onChoose(ref)}
                    >
                      {nameOf(ref)}
                    </button>
                  </li>
                ))}
              </ul>
            </section>
          )
        )
      })}
    </nav>
  )
}
