import { useId, useMemo, useState } from 'react'
import { MOST_IN_LIST, type ReadingList } from '../../record/readings.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { BODY_UNIT_WORDS, PASTE_WORDS, READING_LIST_WORDS } from '../../words/readings.ts'
import { type Column, type Pair, readPasted } from './pastedReadings.ts'
import { useSheetBench } from './sheetBench.ts'

interface Props {
  readonly list: ReadingList
  readonly columns: readonly [Column, Column]
  /** How many readings the table has now. */
  readonly count: number
  readonly take: (pairs: readonly Pair[], way: 'replace' | 'add') => void
  readonly onClose: () => void
}

/** As many lines that cannot be read as can be taken in at a glance. */
const SHOWN = 6

/** A table from a spreadsheet: read as it is pasted; what cannot be read is named, and nothing is taken until all can. */
export function PasteReadings({ list, columns, count, take, onClose }: Props) {
  const { units, readOnly } = useSheetBench()
  const id = useId()
  const [text, setText] = useState('')
  const pasted = useMemo(() => readPasted(text, columns, units), [text, columns, units])
  const words = READING_LIST_WORDS[list]
  const most = MOST_IN_LIST[list]
  const found = pasted.ok ? pasted.pairs.length : 0
  const canTake = (total: number) => !readOnly && found > 0 && total <= most
  const takeAs = (way: 'replace' | 'add') => () => {
    if (!pasted.ok) return
    take(pasted.pairs, way)
    onClose()
  }
  return (
    <Dialog title={PASTE_WORDS.title(words.heading)} onClose={onClose}>
      <div className="dialog-body">
        <p>{PASTE_WORDS.lead(columns[0].label, columns[1].label, BODY_UNIT_WORDS[units.bodyLength])}</p>
        <div className="field field-text">
          <label className="field-label" htmlFor={id}>
            {PASTE_WORDS.text}
          </label>
          <textarea
            className="field-input"
            id={id}
            rows={10}
            spellCheck={false}
            aria-invalid={!pasted.ok}
            aria-describedby={`${id}-read`}
            value={text}
            onChange={(event) => setText(event.target.value)}
          />
        </div>
        <output className="pasted" id={`${id}-read`} htmlFor={id}>
          {pasted.ok ? (
            <>
              {pasted.passedOver !== null && <p className="second">{PASTE_WORDS.heading(pasted.passedOver)}</p>}
              {found > 0 && <p>{PASTE_WORDS.ready(found)}</p>}
              {found > most && <p className="field-problem">{PASTE_WORDS.tooMany(most)}</p>}
            </>
          ) : (
            <>
              <ul>
                {pasted.problems.slice(0, SHOWN).map(({ line, sentence }) => (
                  <li className="field-problem" key={line}>
                    <strong>{PASTE_WORDS.line(line)}</strong> {sentence}
                  </li>
                ))}
              </ul>
              {pasted.problems.length > SHOWN && <p>{PASTE_WORDS.more(pasted.problems.length - SHOWN)}</p>}
              <p>{PASTE_WORDS.nothing}</p>
            </>
          )}
        </output>
        <div className="commands">
          <button className="button button-next" type="button" disabled={!canTake(found)} onClick={takeAs('replace')}>
            {count === 0 ? PASTE_WORDS.take : PASTE_WORDS.replace}
          </button>
          {count > 0 && (
            <button className="button" type="button" disabled={!canTake(count + found)} onClick={takeAs('add')}>
              {PASTE_WORDS.addTo}
            </button>
          )}
        </div>
        {found > 0 && found <= most && count + found > most && count > 0 && (
          <p className="second small">{`${PASTE_WORDS.addTo}: ${PASTE_WORDS.tooMany(most)}`}</p>
        )}
      </div>
    </Dialog>
  )
}
