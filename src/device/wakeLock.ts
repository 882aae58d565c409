/** Keeps the screen from going dark while hands are full. `onChange` is told whether it is kept; gives back how to let go. */
export function keepAwake(onChange: (isKept: boolean) => void): () => void {
  let lock: WakeLockSentinel | null = null
  let isWanted = true
  const ask = async (): Promise<void> => {
    if (!('wakeLock' in navigator) || lock !== null || document.visibilityState !== 'visible') return
    try {
      const got = await navigator.wakeLock.request('screen')
      if (!isWanted) return void got.release()
      lock = got
      onChange(true)
      got.addEventListener('release', () => {
        lock = null
        onChange(false)
      })
    } catch {
      // A device that saves power says no: the screen goes dark as it would anyway.
      onChange(false)
    }
  }
  const onVisible = (): void => void ask()
  document.addEventListener('visibilitychange', onVisible)
  void ask()
  return () => {
    isWanted = false
    document.removeEventListener('visibilitychange', onVisible)
    void lock?.release()
    lock = null
  }
}
