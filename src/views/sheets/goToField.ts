import type { PlanField } from '../../core/planFields.ts'
import type { Sheet } from '../../words/sheets.ts'
import { sheetOfField } from './sheetOfField.ts'

/** The field a maker was sent to on a sheet that is not there yet. */
let awaited: PlanField | null = null

export function awaitField(field: PlanField): void {
  awaited = field
}

/** Once a sheet stands: goes to the field it was opened for, if any. */
export function goToAwaitedField(sheet: Sheet): void {
  if (awaited !== null && sheetOfField(awaited) === sheet && focusField(awaited)) awaited = null
}

/**
 * Puts the cursor into a field of the plan that stands on the page, or, where its form is not the one chosen, into the choice of the
 * form. False where neither stands.
 */
export function focusField(field: PlanField): boolean {
  const steps = field.split('.')
  const parts = steps.slice(0, -1).map((_, i) => steps.slice(0, steps.length - 1 - i).join('.'))
  const names = [field, ...parts.flatMap((part) => [`${part}.form`, `${part}.kind`])]
  for (const name of names) {
    const place = document.querySelector<HTMLElement>(`[data-field="plan.${name}"]`)
    const control = place?.querySelector<HTMLElement>('input:checked, input[type="text"], button')
    if (place === null || control === null || control === undefined) continue
    place.scrollIntoView?.({ block: 'center' })
    control.focus({ preventScroll: true })
    return true
  }
  return false
}
