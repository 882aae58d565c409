import { FROM_READING_WORDS } from '../words/fromReading.ts'
import './readingMark.css'

/** The sign of a number that follows a reading: a rule's edge with the place a caliper was set to. It is read out; it never stands for a verdict. */
export function ReadingMark() {
  return (
    <span className="reading-mark" title={FROM_READING_WORDS.mark}>
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d="M2 3 V13 M14 3 V13 M2 8 H14 M5 5 L2 8 L5 11 M11 5 L14 8 L11 11" />
      </svg>
      <span className="out-of-sight">{` ${FROM_READING_WORDS.mark}`}</span>
    </span>
  )
}
