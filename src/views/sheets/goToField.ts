import type { Finding } from '../../core/findings.ts'
import type { PlanField } from '../../core/planFields.ts'
import type { Sheet } from '../../words/sheets.ts'
import { sheetOfField } from './sheetOfField.ts'

interface Awaited {
  readonly field: PlanField
  /** The dotted name of one value inside a field that is replaced whole. */
  readonly inside: string | null
}

/** The field a maker was sent to on a sheet that is not there yet. */
let awaited: Awaited | null = null

export function awaitField(field: PlanField, inside: string | null = null): void {
  awaited = { field, inside }
}

/** Once a sheet stands: goes to the field it was opened for, if any. */
export function goToAwaitedField(sheet: Sheet): void {
  if (awaited === null || sheetOfField(awaited.field) !== sheet) return
  if (focusField(awaited.field, awaited.inside)) awaited = null
}

/** Where in a field a finding points: the string it is about, at what would mend it. null: the field as a whole. */
export function insideOf({ code, values }: Pick<Finding, 'code' | 'values'>, field: PlanField): string | null {
  const { string } = values
  if (field !== 'strings.set' || string === undefined) return null
  return `${field}.${string - 1}.${code === 'stringMassUnknown' ? 'massGPerM' : 'diameterMm'}`
}

/**
 * Puts the cursor into a field of the plan that stands on the page, or, where its form is not the one chosen, into the choice of the
 * form. False where neither stands.
 */
export function focusField(field: PlanField, inside: string | null = null): boolean {
  const steps = field.split('.')
  const parts = steps.slice(0, -1).map((_, i) => steps.slice(0, steps.length - 1 - i).join('.'))
  const names = [
    ...(inside === null ? [] : [inside]),
    field,
    ...parts.flatMap((part) => [`${part}.form`, `${part}.kind`]),
  ]
  for (const name of names) {
    const place = document.querySelector<HTMLElement>(`[data-field="plan.${name}"]`)
    const controls = place?.querySelectorAll<HTMLElement>('input:checked, input[type="text"], button') ?? []
    // What lies folded away cannot take the focus.
    const control = [...controls].find((one) => one.checkVisibility?.() ?? true)
    if (place === null || control === undefined) continue
    place.scrollIntoView?.({ block: 'center' })
    control.focus({ preventScroll: true })
    return true
  }
  return false
}
