import { PLAN_FIELDS, type PlanField } from '../../core/planFields.ts'
import type { Sheet } from '../../words/sheets.ts'

/** The sheet on which a field can be changed. */
export function sheetOfField(field: PlanField): Sheet {
  const [part] = field.split('.')
  switch (part) {
    case 'handed':
    case 'outline':
      return 'outline'
    case 'rim':
    case 'plates':
      return 'sides'
    case 'back':
    case 'top':
      return 'domes'
    case 'blocks':
      return 'blocks'
    case 'linings':
    case 'sideBraces':
    case 'caul':
      return 'linings'
    case 'bracing':
      return 'bracing'
    case 'cutting':
      return 'cutting'
    case 'air':
      return 'air'
    case 'binding':
    case 'edges':
      return 'edges'
    case 'scale':
    case 'board':
    case 'frets':
      return 'frets'
    case 'strings':
      return 'strings'
    case 'setup':
      return 'neckSet'
    case 'bridge':
      return 'bridge'
    case 'neck':
    case 'head':
      return 'neck'
    default:
      return 'rosette'
  }
}

/** The fields of one sheet. Findings about any of them stand on it. */
export const fieldsOfSheet = (sheet: Sheet): readonly PlanField[] =>
  PLAN_FIELDS.filter((field) => sheetOfField(field) === sheet)
