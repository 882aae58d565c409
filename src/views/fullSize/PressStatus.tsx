import { PRESS_WORDS } from '../../words/press.ts'
import type { PressControl } from './usePressRun.ts'

/** How far the papers are, and the way to call them off. */
export function PressStatus({
  control,
  nameOf,
}: {
  readonly control: PressControl
  readonly nameOf: (paper: string) => string
}) {
  const { standing, cancel } = control
  if (standing.kind === 'idle') return null
  if (standing.kind !== 'running') {
    return (
      <output className="press-status" data-kind={standing.kind}>
        {standing.kind === 'done' ? PRESS_WORDS.done(standing.name) : PRESS_WORDS[standing.kind]}
      </output>
    )
  }
  const { progress } = standing
  return (
    <div className="press-status">
      <progress
        className="press-progress"
        aria-label={PRESS_WORDS.progress}
        max={progress?.of ?? 1}
        {...(progress === null ? {} : { value: progress.done })}
      />
      <output>
        {progress === null
          ? PRESS_WORDS.starting
          : PRESS_WORDS.making(nameOf(progress.paper), progress.done, progress.of)}
      </output>
      <button className="button" type="button" onClick={cancel}>
        {PRESS_WORDS.cancel}
      </button>
    </div>
  )
}
