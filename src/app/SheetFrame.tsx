import { lazy, type ReactNode, Suspense, useEffect, useRef } from 'react'
import { useTimers } from '../views/workshop.ts'
import { FaultBanner } from './Fault.tsx'
import { NewVersionNotice } from './NewVersionNotice.tsx'

const TimerStrip = lazy(async () => ({ default: (await import('./TimerStrip.tsx')).TimerStrip }))

interface Props {
  /** What the window is called while this sheet is in it. */
  readonly windowTitle: string
  /** A new place: reading starts at its top. */
  readonly place: string
  readonly banner?: ReactNode
  readonly foot: ReactNode
  readonly children: ReactNode
}

/** A sheet on the screen: its frame, the work in it, the register and the title block at its foot. */
export function SheetFrame({ windowTitle, place, banner, foot, children }: Props) {
  const timers = useTimers()
  const work = useRef<HTMLElement>(null)
  const shown = useRef(place)
  useEffect(() => {
    document.title = windowTitle
  }, [windowTitle])
  useEffect(() => {
    if (shown.current === place) return
    shown.current = place
    work.current?.scrollTo?.({ top: 0 })
    work.current?.focus({ preventScroll: true })
  }, [place])
  return (
    <div className="sheet">
      <div className="sheet-frame">
        <div>
          <FaultBanner />
          {banner}
          {timers !== null && (
            <Suspense fallback={null}>
              <TimerStrip timers={timers} />
            </Suspense>
          )}
        </div>
        {/* Outside what is keyed by the place: so it still shows the last sheet while the next is fetched. */}
        <Suspense fallback={<main className="sheet-work" />}>
          <main className="sheet-work" ref={work} tabIndex={-1} key={place}>
            {children}
          </main>
        </Suspense>
        <div>
          <NewVersionNotice />
          <footer className="sheet-foot">{foot}</footer>
        </div>
      </div>
    </div>
  )
}
