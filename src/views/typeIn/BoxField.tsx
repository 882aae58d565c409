import { type KeyboardEvent, useId, useState } from 'react'
import { aboutNumber } from '../../core/catalogue.ts'
import { figureText } from '../../format/figure.ts'
import { formatReading } from '../../format/typedReading.ts'
import { askedOfBox, type Box, placeOfBox, type ReadingSite } from '../../record/bench/readingOf.ts'
import { readAt } from '../../record/bench/readAt.ts'
import { TYPE_IN_WORDS } from '../../words/measured.ts'
import { readText } from '../readings/readText.ts'
import { VerdictText } from '../readings/VerdictText.tsx'
import { useCommission, useDraft, useShop, useWorkshop } from '../workshop.ts'
import { boxDraft } from './boxDraft.ts'

interface Props {
  readonly box: Box
  readonly called: string
  readonly stageId: string
  readonly site: ReadingSite
  readonly tolerance: number | null
}

/** A box of the sheet as a field: what is typed is kept as it is, and how it stands to the target is said beside it. */
export function BoxField({ box, called, stageId, site, tolerance }: Props) {
  const { drafts } = useWorkshop()
  const docId = useCommission((state) => state.id) ?? ''
  const units = useShop((state) => state.shop.units)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const name = boxDraft(stageId, box)
  const text = useDraft(docId, name) ?? ''
  const [isFocused, setFocused] = useState(false)
  const hintId = useId()
  const asked = askedOfBox(site, box)
  const read = text.trim() === '' ? null : readText(text, called, box.number, asked, units)
  const before = readAt(site.all, placeOfBox(site, box))
  const isBad = read !== null && !read.ok
  const type = (next: string): void => (next === '' ? drafts.clear(docId, name) : drafts.keep(docId, name, next))
  return (
    <div className="type-in-box">
      <input
        className="field-input"
        type="text"
        size={7}
        autoComplete="off"
        autoCorrect="off"
        autoCapitalize="off"
        spellCheck={false}
        enterKeyHint="next"
        data-box={name}
        aria-label={called}
        aria-invalid={isBad}
        aria-describedby={hintId}
        readOnly={isLocked}
        value={text}
        onChange={(event) => type(event.target.value)}
        onFocus={() => setFocused(true)}
        onBlur={() => setFocused(false)}
        onKeyDown={goOn}
      />
      <span className="type-in-said small" id={hintId}>
        {read?.ok === true && (
          <VerdictText number={box.number} value={read.value} asked={asked} tolerance={tolerance} units={units} />
        )}
        {read === null && before !== null && (
          <span className="second">
            {TYPE_IN_WORDS.readBefore(figureText(formatReading(before.value, aboutNumber(box.number).quantity, units)))}
          </span>
        )}
        {/* A text that is still being typed is not held against the maker. */}
        {isBad && !isFocused && <span className="field-problem">{read.sentence}</span>}
      </span>
      {isBad && !isFocused && read.spellings !== null && !isLocked && (
        <span className="field-asked">
          {read.spellings.map((spelling) => (
            <button className="button" type="button" key={spelling} onClick={() => type(spelling)}>
              {spelling}
            </button>
          ))}
        </span>
      )}
    </div>
  )
}

/** Enter goes on to the next box of the sheet, with Shift to the one before; from the last to what stores them. */
function goOn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== 'Enter') return
  event.preventDefault()
  const sheet = event.currentTarget.closest('.type-in')
  const boxes = [...(sheet?.querySelectorAll<HTMLElement>('[data-box], [data-stores]') ?? [])]
  const next = boxes[boxes.indexOf(event.currentTarget) + (event.shiftKey ? -1 : 1)]
  next?.focus()
  if (next instanceof HTMLInputElement) next.select()
}
