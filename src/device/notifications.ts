/**
 * Whether this page may have the device tell something.
 *   unasked  it can be asked for
 *   allowed  it may
 *   refused  the maker, or the browser for them, said no
 *   none     the device has no such thing, or not for a page that came over plain http
 */
export type NoticeAnswer = 'unasked' | 'allowed' | 'refused' | 'none'

const ANSWERS: Readonly<Record<NotificationPermission, NoticeAnswer>> = {
  default: 'unasked',
  granted: 'allowed',
  denied: 'refused',
}

/** As it stands, without asking. */
export const noticeAnswer = (): NoticeAnswer =>
  typeof Notification === 'undefined' || !isSecureContext ? 'none' : ANSWERS[Notification.permission]

/** Asks the maker; only under a tap, as browsers want it. Never throws. */
export async function askForNotices(): Promise<NoticeAnswer> {
  if (noticeAnswer() !== 'unasked') return noticeAnswer()
  try {
    return ANSWERS[await Notification.requestPermission()]
  } catch {
    return 'none'
  }
}

/**
 * Has the device tell it: by the page's service worker where one stands, since some tablets know no other way, else by the page. `tag` keeps a
 * second notice of the same thing from piling up; `address` is where it leads. Never throws.
 */
export async function giveNotice(
  title: string,
  { body, tag, address }: { readonly body: string; readonly tag: string; readonly address: string },
): Promise<NoticeAnswer> {
  const answer = noticeAnswer()
  if (answer !== 'allowed') return answer
  try {
    const worker = await navigator.serviceWorker?.getRegistration()
    if (worker?.active) {
      await worker.showNotification(title, { body, tag, data: { address } })
      return 'allowed'
    }
    const notice = new Notification(title, { body, tag })
    notice.addEventListener('click', () => {
      window.focus()
      window.location.hash = address
      notice.close()
    })
    return 'allowed'
  } catch {
    return 'none'
  }
}
