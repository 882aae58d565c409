import { useState } from 'react'
import { useStore } from 'zustand'
import { aboutNumber } from '../../core/catalogue.ts'
import { shopTypedUnit, withTypedUnit } from '../../format/typedReading.ts'
import { boxesInOrder, type BoxTable } from '../../papers/stageBoxes.ts'
import { type NewReading, recordReading } from '../../record/bench/measured.ts'
import { askedOfBox, readingOf, type ReadingSite } from '../../record/bench/readingOf.ts'
import { TYPE_IN_WORDS } from '../../words/measured.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { readText } from '../readings/readText.ts'
import { useCommission, useDraft, useShop, useWorkshop } from '../workshop.ts'
import { boxDraft, gaugeDraft } from './boxDraft.ts'

interface Props {
  readonly tables: readonly BoxTable[]
  readonly stageId: string
  readonly site: ReadingSite
}

const words = TYPE_IN_WORDS

/** Stores every box that can be read, in one action; what cannot be read waits in its box with the reason. */
export function StoreSheet({ tables, stageId, site }: Props) {
  const { commission, drafts } = useWorkshop()
  const docId = useCommission((state) => state.id) ?? ''
  const isLocked = useCommission((state) => state.readOnly !== null)
  const units = useShop((state) => state.shop.units)
  const gauge = useDraft(docId, gaugeDraft(stageId)) ?? ''
  const [said, say] = useState('')
  // Whatever is typed into any box changes how many there are to store.
  useStore(drafts.store, (state) => state.texts)
  const typed = boxesInOrder(tables).flatMap((box) => {
    const name = boxDraft(stageId, box)
    const text = drafts.textOf(docId, name)?.trim() ?? ''
    if (text === '') return []
    const read = readText(text, NUMBER_NAMES[box.number], box.number, askedOfBox(site, box), units)
    return [{ box, name, text, read }]
  })
  const good = typed.flatMap(({ box, name, text, read }) => (read.ok ? [{ box, name, text, value: read.value }] : []))

  const store = (): void => {
    if (good.length === 0) return say(typed.length === 0 ? words.nothing : words.left(typed.length))
    const readings = good.map(({ box, text, value }): NewReading => {
      const unit = shopTypedUnit(aboutNumber(box.number).quantity, units)
      return readingOf(site, box, { value, typed: withTypedUnit(text, unit), gauge, stageId })
    })
    const answer = commission.addFacts((row, meta) => readings.map((reading) => recordReading(row, reading, meta)))
    if (!answer.ok) return say(words.refused)
    for (const { name } of good) drafts.clear(docId, name)
    const left = typed.length - good.length
    say([words.stored(good.length), left > 0 ? words.left(left) : ''].filter((part) => part !== '').join(' '))
  }

  return (
    <div className="type-in-foot">
      <label className="field">
        <span className="field-label">{words.gauge}</span>
        <input
          className="field-input"
          type="text"
          autoComplete="off"
          maxLength={120}
          readOnly={isLocked}
          value={gauge}
          onChange={(event) => drafts.keep(docId, gaugeDraft(stageId), event.target.value)}
        />
      </label>
      <button className="button button-next" type="button" data-stores disabled={isLocked} onClick={store}>
        {words.store(good.length)}
      </button>
      <output>{said}</output>
    </div>
  )
}
