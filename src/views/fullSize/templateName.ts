import type { Computed } from '../../core/compute.ts'
import { braceRowOf } from '../../drawing/template/braceRef.ts'
import type { TemplateRef } from '../../drawing/template/template.ts'
import { templateTitle } from '../../words/templates.ts'

/** A template by name; a brace by its number among all. */
export const templateName = (ref: TemplateRef, computed: Computed): string =>
  templateTitle(ref, (of) => {
    const row = braceRowOf(computed, of)
    return row === null ? null : row + 1
  })
