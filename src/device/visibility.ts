/** Calls back when the page is hidden or left: the last moment that is sure to come. Gives back how to stop listening. */
export function whenHidden(act: () => void): () => void {
  const onChange = (): void => {
    if (document.visibilityState === 'hidden') act()
  }
  document.addEventListener('visibilitychange', onChange)
  window.addEventListener('pagehide', act)
  return () => {
    document.removeEventListener('visibilitychange', onChange)
    window.removeEventListener('pagehide', act)
  }
}

/** Holds the page with the browser's own question while `hasUnsaved()` says there is something to lose. */
export function askBeforeLeaving(hasUnsaved: () => boolean): () => void {
  const onLeave = (event: BeforeUnloadEvent): void => {
    if (hasUnsaved()) event.preventDefault()
  }
  window.addEventListener('beforeunload', onLeave)
  return () => window.removeEventListener('beforeunload', onLeave)
}
