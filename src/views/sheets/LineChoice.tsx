import { useId } from 'react'
import type { ReadLines } from '../../files/takeOutline.ts'
import { figureText } from '../../format/figure.ts'
import { formatLength } from '../../format/formatLength.ts'
import { DRAWN_PATH_WORDS } from '../../words/drawnPath.ts'
import { useSheetBench } from './sheetBench.ts'

interface Props {
  readonly read: ReadLines
  readonly onChoose: (key: number) => void
}

/** The lines of a drawing, the longest first, to choose the outline from. */
export function LineChoice({ read, onChoose }: Props) {
  const { units } = useSheetBench()
  const name = useId()
  return (
    <fieldset className="drawing-lines">
      <legend className="field-label">{DRAWN_PATH_WORDS.line}</legend>
      {read.lines.map(({ key, name: called, lengthMm, chain }, i) => (
        <label className="choice" key={key}>
          <input type="radio" name={name} checked={key === read.line?.key} onChange={() => onChoose(key)} />
          <span className="drawn-path-name">
            {`${DRAWN_PATH_WORDS.lineName(i + 1, called)}, ${figureText(formatLength(lengthMm, 'bodyLength', units))}, ${
              chain.isClosed ? DRAWN_PATH_WORDS.closed : DRAWN_PATH_WORDS.openEnds
            }`}
          </span>
        </label>
      ))}
      {read.notListed > 0 && <p className="second small">{DRAWN_PATH_WORDS.notListed(read.notListed)}</p>}
    </fieldset>
  )
}
