import { useEffect } from 'react'
import { useWorkshop } from '../views/workshop.ts'

/**
 * Ctrl or Cmd with Z and Shift+Z (or Y) for undo and redo. While a text is being written they belong to the text; in a field whose text stands as it
 * was found there is nothing of its own to take back, so they take back what was done before.
 */
export function useUndoKeys(isOn: boolean): void {
  const { commission } = useWorkshop()
  useEffect(() => {
    if (!isOn) return undefined
    let written: EventTarget | null = null
    let found = ''
    const onBefore = ({ target }: Event): void => {
      if (isText(target) && written !== target) found = target.value
    }
    const onInput = ({ target }: Event): void => {
      if (isText(target)) written = target.value === found ? null : target
    }
    const onLeave = (): void => {
      written = null
    }
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return
      if (isText(event.target) && (written === event.target || event.target.closest(FIELD) === null)) return
      const key = event.key.toLowerCase()
      if (key === 'z' && !event.shiftKey) commission.undo()
      else if (key === 'y' || key === 'z') commission.redo()
      else return
      event.preventDefault()
    }
    const listeners = [
      ['beforeinput', onBefore],
      ['input', onInput],
      ['focusout', onLeave],
    ] as const
    for (const [name, listen] of listeners) window.addEventListener(name, listen)
    window.addEventListener('keydown', onKey)
    return () => {
      for (const [name, listen] of listeners) window.removeEventListener(name, listen)
      window.removeEventListener('keydown', onKey)
    }
  }, [commission, isOn])
}

/** Fields of the record carry the name of their place; a search or a printed code is not one. */
const FIELD = '[data-field]'

const isText = (target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement =>
  target instanceof HTMLElement && target.matches('input:not([type="radio"]):not([type="checkbox"]), textarea')
