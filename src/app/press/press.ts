import type { PaperPrint } from '../../record/printed.ts'
import type { Press, PressedFile } from '../../views/press.ts'
import type { PressAnswer, PressJob } from './message.ts'

/** A press that runs each order in a worker of its own; calling one off ends its worker. */
export function createPress(startWorker: () => Worker): Press {
  function run(job: PressJob, onAnswer: (answer: PressAnswer) => void, onEnd: (why: 'failed' | 'cancelled') => void) {
    const worker = startWorker()
    worker.addEventListener('message', ({ data }: MessageEvent<PressAnswer>) => {
      if (data.kind === 'failed') onEnd('failed')
      else onAnswer(data)
      if (data.kind === 'failed' || data.kind === 'marks') worker.terminate()
    })
    worker.addEventListener('error', () => {
      onEnd('failed')
      worker.terminate()
    })
    // A worker has no origin to name: the rule means windows.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    worker.postMessage(job)
    return () => {
      onEnd('cancelled')
      worker.terminate()
    }
  }
  return {
    make: (order, papers, form, onProgress) => {
      const file = promised<PressedFile>()
      const prints = promised<readonly PaperPrint[]>()
      const cancel = run(
        { kind: 'make', order, papers, form },
        (answer) => {
          if (answer.kind === 'progress') onProgress(answer)
          if (answer.kind === 'file') file.keep(answer.file)
          if (answer.kind === 'marks') prints.keep(answer.prints)
        },
        (why) => {
          file.end(why)
          prints.end(why)
        },
      )
      return { answer: file.promise, prints: prints.promise, cancel }
    },
    marks: (order, papers) => {
      const prints = promised<readonly PaperPrint[]>()
      const cancel = run(
        { kind: 'marks', order, papers },
        (answer) => answer.kind === 'marks' && prints.keep(answer.prints),
        prints.end,
      )
      return { answer: prints.promise, cancel }
    },
  }
}

/** Something that comes later, is called off (null), or fails; what comes after the first of these counts no more. */
function promised<Value>() {
  let keep: (value: Value | null) => void = () => undefined
  let fail: (fault: Error) => void = () => undefined
  const promise = new Promise<Value | null>((resolve, reject) => {
    keep = resolve
    fail = reject
  })
  // Whoever waits hears of a failure; where nobody waits it is no fault of the page.
  promise.catch(() => undefined)
  const end = (why: 'failed' | 'cancelled') =>
    why === 'failed' ? fail(new Error('the press could not make it')) : keep(null)
  return { promise, keep, end }
}

/** The press of this page. */
export const pagePress: Press = createPress(
  () => new Worker(new URL('./pressWorker.ts', import.meta.url), { type: 'module', name: 'press' }),
)
