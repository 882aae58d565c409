import { useEffect } from 'react'
import { useWorkshop } from '../views/workshop.ts'

/** Ctrl or Cmd with Z and Shift+Z (or Y) for undo and redo, wherever no text is being written: there they belong to the text. */
export function useUndoKeys(isOn: boolean): void {
  const { commission } = useWorkshop()
  useEffect(() => {
    if (!isOn) return undefined
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isWriting(event.target)) return
      const key = event.key.toLowerCase()
      if (key === 'z' && !event.shiftKey) commission.undo()
      else if (key === 'y' || key === 'z') commission.redo()
      else return
      event.preventDefault()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [commission, isOn])
}

const isWriting = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input:not([type="radio"]):not([type="checkbox"]), textarea')
