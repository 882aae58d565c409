/** Does something once the page has nothing better to do; gives what calls it off. Where the browser cannot tell, it is never done. */
export function whenIdle(act: () => void): () => void {
  if (typeof requestIdleCallback === 'undefined') return () => undefined
  const asked = requestIdleCallback(act)
  return () => cancelIdleCallback(asked)
}
