import type { Computed } from '../../core/compute.ts'
import { braceRowsOf } from '../../drawing/template/braceRef.ts'
import { formOffMm } from '../../drawing/template/formOff.ts'
import type { TemplateRef } from '../../drawing/template/template.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import type { ShopDoc } from '../../record/commission.ts'
import { templateTitle, templateUse } from '../../words/templates.ts'

/** A template by name; a brace by its number among all, twins that take the same one by both. */
export const templateName = (ref: TemplateRef, computed: Computed): string =>
  templateTitle(ref, (of) => {
    const rows = braceRowsOf(computed, of)
    const first = rows[0]
    if (first === undefined) return null
    const { kind, plate } = computed.geometry.bracing.placed[first]!.plan
    return { numbers: rows.map((row) => row + 1), kind, plate }
  })

/** What a template is for; of a form, how far its line runs from the outer face of the sides with the shop's gear, in the shop's unit. */
export function templatePurpose(
  { name }: TemplateRef,
  computed: Computed,
  { jigs, units }: Pick<ShopDoc, 'jigs' | 'units'>,
): string {
  const offMm = formOffMm(name, computed, jigs)
  return templateUse(name, offMm === null ? null : figureText(formatQuantity(offMm, 'fineLength', units)))
}
