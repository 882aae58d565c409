/** Whether the page can be seen, and a call back whenever that changes. */
export interface PageSight {
  readonly isVisible: () => boolean
  readonly watch: (act: () => void) => () => void
}

export const pageSight: PageSight = {
  isVisible: () => document.visibilityState === 'visible',
  watch(act) {
    document.addEventListener('visibilitychange', act)
    // A page taken out of the browser's store of left pages has slept without being hidden.
    window.addEventListener('pageshow', act)
    return () => {
      document.removeEventListener('visibilitychange', act)
      window.removeEventListener('pageshow', act)
    }
  },
}
