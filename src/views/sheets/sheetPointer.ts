import { createContext, useContext } from 'react'
import type { NumberKey } from '../../core/catalogue.ts'
import type { NumberRef } from '../../drawing/drawing.ts'

/** What the maker's finger is on: the number that is lit in drawing, figures and table, and the one whose help is open. */
export interface SheetPointer {
  readonly lit: NumberRef | null
  readonly light: (ref: NumberRef | null) => void
  readonly openHelp: (key: NumberKey) => void
}

export const SheetPointerContext = createContext<SheetPointer>({
  lit: null,
  light: () => undefined,
  openHelp: () => undefined,
})

export const useSheetPointer = (): SheetPointer => useContext(SheetPointerContext)

export const sameNumber = (a: NumberRef | null, b: NumberRef): boolean =>
  a !== null && a.key === b.key && a.row === b.row
