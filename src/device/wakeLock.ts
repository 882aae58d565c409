/** Whether the screen is kept from going dark: 'refused' where the browser will not (a low battery), 'none' where it has no such thing. */
export type WakeAnswer = 'held' | 'refused' | 'none'

/**
 * Keeps the screen from going dark until what it gives back is called. A browser takes the lock away with the page; it is asked for again
 * when the page is seen again. `tell` hears how it stands, now and whenever that changes. Never throws.
 */
export function keepAwake(tell: (answer: WakeAnswer) => void): () => void {
  if (typeof navigator === 'undefined' || !('wakeLock' in navigator)) {
    tell('none')
    return () => undefined
  }
  let held: WakeLockSentinel | null = null
  let isAsking = false
  let isOver = false

  async function ask(): Promise<void> {
    if (isOver || isAsking || held !== null || document.visibilityState !== 'visible') return
    isAsking = true
    const got = await navigator.wakeLock.request('screen').catch(() => null)
    isAsking = false
    if (isOver) return void got?.release().catch(() => undefined)
    if (got === null) {
      // Refused because the page went out of sight meanwhile: it is asked for again when it comes back.
      if (document.visibilityState === 'visible') tell('refused')
      return
    }
    held = got
    got.addEventListener('release', () => {
      held = null
      if (!isOver && document.visibilityState === 'visible') tell('refused')
    })
    tell('held')
  }

  const onChange = (): void => void ask()
  document.addEventListener('visibilitychange', onChange)
  void ask()
  return () => {
    isOver = true
    document.removeEventListener('visibilitychange', onChange)
    void held?.release().catch(() => undefined)
  }
}
