import { FULL_SIZE_VIEW_WORDS } from '../../words/press.ts'
import { PrintingField } from './SheetFields.tsx'

/** What the measuring box came out as: the printer's own error, taken out of every sheet from then on. */
export function PrinterFields() {
  return (
    <details className="full-size-more">
      <summary>{FULL_SIZE_VIEW_WORDS.printer}</summary>
      <p className="second small">{FULL_SIZE_VIEW_WORDS.printerLead}</p>
      <PrintingField field="boxAcrossMm" />
      <PrintingField field="boxAlongMm" />
    </details>
  )
}
