import { useMemo } from 'react'
import { revisionCode } from '../record/revisionCode.ts'
import { useCommission } from './workshop.ts'

/** The code of what the record in hand shows on paper: of what is planned, so that the log knows it; '' while none is open. */
export function useRevisionCode(): string {
  const doc = useCommission((state) => state.record?.doc ?? null)
  return useMemo(() => (doc === null ? '' : revisionCode(doc)), [doc])
}
