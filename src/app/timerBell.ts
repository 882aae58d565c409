import { playChime, readyChime } from '../device/chime.ts'
import { askForNotices, giveNotice, noticeAnswer } from '../device/notifications.ts'
import { pageSight } from '../device/pageSight.ts'
import { vibrate } from '../device/vibrate.ts'
import type { Bell } from '../state/timerStore.ts'
import { TIMER_NOTICE } from '../words/timerNotice.ts'

/** How timers make themselves known on a device with a browser. */
export const timerBell: Bell = {
  sight: pageSight,
  ready: readyChime,
  chime: () => void playChime(),
  shake: vibrate,
  answer: noticeAnswer,
  ask: askForNotices,
  tell: ({ id, docId, number, label }) =>
    giveNotice(TIMER_NOTICE.title(label), { body: TIMER_NOTICE.body(number), tag: id, address: `#/i/${docId}` }),
}
