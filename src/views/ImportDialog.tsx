import { useEffect } from 'react'
import { useLocation } from 'wouter'
import { Dialog } from '../ui/Dialog.tsx'
import { IMPORT_WORDS } from '../words/bench.ts'
import { placeName } from '../words/places.ts'
import { problemSentence } from '../words/problems.ts'
import { rangeText } from './valueText.ts'
import { useImport, useShop, useWorkshop } from './workshop.ts'

/** Where the opening of a file stands: nothing while all is well, a question where the instrument is here already, a sentence where it is refused. */
export function ImportDialog() {
  const { importer } = useWorkshop()
  const state = useImport((now) => now)
  const units = useShop((now) => now.shop.units)
  const [, go] = useLocation()
  const openedId = state.kind === 'opened' ? state.id : null
  useEffect(() => {
    if (openedId === null) return
    importer.dismiss()
    go(`/i/${openedId}`)
  }, [openedId, importer, go])

  if (state.kind === 'reading') return <output>{IMPORT_WORDS.reading}</output>
  if (state.kind === 'clash') {
    const label = `${state.file.number} ${state.file.title}`.trim()
    return (
      <Dialog title={IMPORT_WORDS.clashTitle} onClose={importer.dismiss}>
        <div className="dialog-body">
          <p>{IMPORT_WORDS.clash(label)}</p>
          <div className="commands">
            <button className="button button-next" type="button" onClick={() => void importer.keepBoth()}>
              {IMPORT_WORDS.keepBoth}
            </button>
            <button className="button" type="button" onClick={() => void importer.replace()}>
              {IMPORT_WORDS.replace}
            </button>
          </div>
        </div>
      </Dialog>
    )
  }
  if (state.kind === 'refused' || state.kind === 'notStored') {
    return (
      <Dialog title={IMPORT_WORDS.refusedTitle} onClose={importer.dismiss}>
        <p role="alert">{problemSentence(state.problem, { placeName, range: (range) => rangeText(range, units) })}</p>
      </Dialog>
    )
  }
  return null
}
