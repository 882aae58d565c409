import { type ReactNode, useEffect, useId, useRef } from 'react'
import './dialog.css'

interface Props {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}

/** A sheet laid over the sheet: the browser's own dialog, so Escape, focus and reading order are its. Shown while it is mounted. */
export function Dialog({ title, onClose, children }: Props) {
  const ref = useRef<HTMLDialogElement>(null)
  const titleId = useId()
  useEffect(() => {
    const dialog = ref.current
    if (dialog !== null && !dialog.open) dialog.showModal()
    return () => dialog?.close()
  }, [])
  return (
    <dialog className="dialog" ref={ref} aria-labelledby={titleId} onCancel={() => onClose()}>
      <div className="dialog-head">
        <h2 id={titleId}>{title}</h2>
        <button className="button button-plain" type="button" onClick={onClose}>
          Close
        </button>
      </div>
      {children}
    </dialog>
  )
}
