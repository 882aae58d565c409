import type { ReactNode } from 'react'
import { PressContext } from '../views/press.ts'
import { pagePress } from './press/press.ts'

/** Where papers leave from: whatever stands in it can have them made. */
export const PressRoom = ({ children }: { readonly children: ReactNode }) => (
  <PressContext value={pagePress}>{children}</PressContext>
)
