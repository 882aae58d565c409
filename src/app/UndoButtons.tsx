import { useEffect, useState } from 'react'
import type { GestureLabel } from '../record/undo.ts'
import { useCommission, useWorkshop } from '../views/workshop.ts'
import { REVISION_WORDS } from '../words/instrument.ts'
import type { gestureName } from './gestureNames.ts'
import './undo.css'

type NameOf = typeof gestureName

/**
 * Undo on every sheet, and redo while there is anything to do again. What they take back is their name: its words are fetched with those of the
 * fields, on a sheet that has them, or once a hand comes near.
 */
export function UndoButtons({ hasFields }: { readonly hasFields: boolean }) {
  const { commission } = useWorkshop()
  const undo = useCommission((state) => state.undo)
  const redo = useCommission((state) => state.redo)
  const changes = useCommission((state) => state.changes)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const [nameOf, setNameOf] = useState<NameOf | null>(null)
  const [isNear, setNear] = useState(false)
  const isNamed = (hasFields || isNear) && (undo !== null || redo !== null)
  useEffect(() => {
    if (!isNamed) return undefined
    let isHere = true
    const take = async (): Promise<void> => {
      const names = await import('./gestureNames.ts')
      if (isHere) setNameOf(() => names.gestureName)
    }
    void take()
    return () => {
      isHere = false
    }
  }, [isNamed])
  const titleOf = (word: string, label: GestureLabel | null): string =>
    label === null || nameOf === null ? word : `${word}: ${nameOf(label, changes)}`
  const undoTitle = titleOf(REVISION_WORDS.undo, undo)
  const redoTitle = titleOf(REVISION_WORDS.redo, redo)
  return (
    <div className="undo-buttons" onPointerEnter={() => setNear(true)} onFocus={() => setNear(true)}>
      <button
        className="undo-button"
        type="button"
        title={undoTitle}
        aria-label={undoTitle}
        disabled={isLocked || undo === null}
        onClick={() => commission.undo()}
      >
        {REVISION_WORDS.undo}
      </button>
      {redo !== null && (
        <button
          className="undo-button"
          type="button"
          title={redoTitle}
          aria-label={redoTitle}
          disabled={isLocked}
          onClick={() => commission.redo()}
        >
          {REVISION_WORDS.redo}
        </button>
      )}
    </div>
  )
}
