import { useEffect, useRef } from 'react'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'

/** A number of the stage as its list shows it. */
export interface NumberLine {
  readonly called: string
  readonly value: string
  readonly isRead: boolean
}

interface Props {
  readonly lines: readonly NumberLine[]
  readonly at: number
  readonly onChoose: (at: number) => void
}

/** Every number of the stage, to take one in hand without stepping to it. */
export function NumbersPanel({ lines, at, onChoose }: Props) {
  const here = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    here.current?.scrollIntoView?.({ block: 'center' })
  }, [])
  return (
    <section className="bench-panel" aria-label={words.allNumbers}>
      <h2>{words.allNumbers}</h2>
      <ol className="bench-choices">
        {lines.map(({ called, value, isRead }, i) => (
          // The order of a stage's numbers is fixed, so their place is their key.
          <li key={i}>
            <button
              className="bench-choice"
              type="button"
              ref={i === at ? here : null}
              aria-current={i === at ? 'true' : undefined}
              onClick={() => onChoose(i)}
            >
              <span>{called}</span>
              <span className="bench-choice-value">{value}</span>
              <span className="second">{isRead ? words.isRead : ''}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  )
}
