import plainFont from '@fontsource/barlow/files/barlow-latin-400-normal.woff?url'
import strongFont from '@fontsource/barlow/files/barlow-latin-600-normal.woff?url'
import plainMoreFont from '@fontsource/barlow/files/barlow-latin-ext-400-normal.woff?url'
import strongMoreFont from '@fontsource/barlow/files/barlow-latin-ext-600-normal.woff?url'
import { makeFile } from './makeFile.ts'
import { marksOf } from './marks.ts'
import type { PressAnswer, PressJob } from './message.ts'

const answer = (message: PressAnswer, transfer: Transferable[] = []): void => self.postMessage(message, { transfer })

const fetchBytes = async (address: string): Promise<Uint8Array> =>
  new Uint8Array(await (await fetch(address)).arrayBuffer())

async function work(job: PressJob): Promise<void> {
  const tellMarks = () => answer({ kind: 'marks', prints: marksOf(job.order, job.papers) })
  if (job.kind === 'marks') return tellMarks()
  const [plain, strong, plainMore, strongMore] = await Promise.all([
    fetchBytes(plainFont),
    fetchBytes(strongFont),
    fetchBytes(plainMoreFont),
    fetchBytes(strongMoreFont),
  ])
  const fonts = { plain, strong, plainMore, strongMore }
  const file = await makeFile(job, fonts, (progress) => answer({ kind: 'progress', ...progress }))
  answer({ kind: 'file', file }, [file.bytes.buffer])
  tellMarks()
}

self.addEventListener('message', ({ data }: MessageEvent<PressJob>) => {
  work(data).catch(() => answer({ kind: 'failed' }))
})
