import { useEffect, useRef } from 'react'
import type { PadText } from './padText.ts'

/** Signs a reading begins with, and those that may follow: figures, their signs, and the letters and marks of a unit. */
const BEGINS = /^[\d.,/-]$/u
const FOLLOWS = /^[\d.,/ a-z"'°+-]$/iu

interface PadKeys {
  readonly typed: PadText
  /** Something was typed: the pad opens. */
  readonly onTyped: () => void
  readonly onStore: () => void
  readonly onClear: () => void
}

/**
 * Whatever is typed while the bench is open goes into the pad, wherever the focus is: a keyboard, and a caliper that acts as one. Enter stores, Escape
 * clears. Keys of a field, and those with Ctrl, Alt or Cmd, are left alone; so are Enter and the space bar on a button while nothing is typed.
 */
export function usePadKeys(isOn: boolean, keys: PadKeys): void {
  const latest = useRef(keys)
  useEffect(() => {
    latest.current = keys
  })
  useEffect(() => {
    if (!isOn) return undefined
    const onKey = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || isField(event.target)) return
      const { typed, onTyped, onStore, onClear } = latest.current
      const isBlank = typed.now() === ''
      const { key } = event
      if (isBlank ? BEGINS.test(key) : FOLLOWS.test(key)) {
        typed.add(key)
        onTyped()
      } else if (key === 'Enter' && !isBlank) onStore()
      else if (key === 'Backspace' && !isBlank) typed.rubOut()
      else if (key === 'Escape') onClear()
      else return
      event.preventDefault()
      event.stopPropagation()
    }
    window.addEventListener('keydown', onKey, { capture: true })
    return () => window.removeEventListener('keydown', onKey, { capture: true })
  }, [isOn])
}

const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, textarea, select, dialog *')
