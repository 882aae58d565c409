import type { Computed } from '../../core/compute.ts'
import { FORM_LINES, type FormLine, formInsetMm, type Jigs } from '../../core/jigs.ts'
import type { TemplateName } from './template.ts'

/** Whether a template is the line of a form. */
export const isForm = (name: TemplateName): name is FormLine => (FORM_LINES as readonly TemplateName[]).includes(name)

/** How far from the outer face of the sides the line of a form is cut, mm, on whichever side; null for what is no form. */
export const formOffMm = (name: TemplateName, { geometry }: Computed, jigs: Jigs): number | null =>
  isForm(name) ? Math.abs(formInsetMm(name, geometry.rimSite.sideThicknessMm, jigs)) : null
