import { useEffect, useState } from 'react'
import './notice.css'

export interface NoticeText {
  /** Tells one notice from the next. */
  readonly id: string
  readonly sentence: string
  readonly offer: { readonly word: string; readonly act: () => void } | null
}

/** Long enough to read, think and reach over: WCAG 2.2.1 asks for 20 seconds where time may not be extended. */
const STAYS_MS = 30_000

/** One line at the edge of the sheet: what was done, and the way back. It waits while it is pointed at or holds the focus. */
export function Notice({ notice, onClose }: { readonly notice: NoticeText | null; readonly onClose: () => void }) {
  const [isHeld, setHeld] = useState(false)
  useEffect(() => {
    if (notice === null || isHeld) return undefined
    const timer = setTimeout(onClose, STAYS_MS)
    return () => clearTimeout(timer)
  }, [notice, isHeld, onClose])
  return (
    <output className="notice">
      {notice !== null && (
        <span
          className="notice-line"
          onPointerEnter={() => setHeld(true)}
          onPointerLeave={() => setHeld(false)}
          onFocus={() => setHeld(true)}
          onBlur={() => setHeld(false)}
        >
          <span>{notice.sentence}</span>
          {notice.offer !== null && (
            <button
              className="button"
              type="button"
              onClick={() => {
                notice.offer?.act()
                onClose()
              }}
            >
              {notice.offer.word}
            </button>
          )}
          <button className="button button-plain" type="button" onClick={onClose}>
            Close
          </button>
        </span>
      )}
    </output>
  )
}
