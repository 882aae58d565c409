import { useState } from 'react'
import {
  distanceFromOriginMm,
  distanceRangeMm,
  type Layout,
  placeAtDistance,
  type WayAlong,
} from '../../core/instrument/placeByX.ts'
import type { HalfName } from '../../drawing/innerFace.ts'
import type { FieldBinding } from '../../ui/fieldBinding.ts'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { SIDES_WORDS } from '../../words/bodySheets.ts'
import { ALONG_WORDS, ORIGIN_WORDS } from '../../words/measuring.ts'
import { useSheetBench } from './sheetBench.ts'
import { useLayout } from './useLayout.ts'

interface Props {
  readonly side: HalfName
  /** Arc length of the place in hand on the outer face, mm. */
  readonly placeMm: number
  readonly along: WayAlong
  /** What the place is called, if it has a name or a number. */
  readonly named: string | null
  readonly toTailMm: number | null
  readonly toNeckMm: number | null
  readonly onPlace: (placeMm: number) => void
}

const nothing = (): void => undefined

/** Takes a place of the side in hand: by its distance from where the maker measures, or station by station. */
export function PlacePicker({ side, placeMm, along, named, toTailMm, toNeckMm, onPlace }: Props) {
  const { units, origin, computed } = useSheetBench()
  const layout = useLayout(along, computed, side)
  const range = distanceRangeMm(layout)
  // What was typed, exactly, as long as the place it led to is in hand: going there and back costs the last digits.
  const [typed, setTyped] = useState<{ layout: Layout; placeMm: number; distanceMm: number } | null>(null)
  const isTyped = typed !== null && typed.layout === layout && typed.placeMm === placeMm
  const binding: FieldBinding<LengthValue> = {
    name: `place.${origin}.${along}`,
    value: isTyped ? typed.distanceMm : distanceFromOriginMm(layout, placeMm),
    draft: null,
    readOnly: false,
    begin: nothing,
    end: nothing,
    take: (distanceMm) => {
      const found = typeof distanceMm === 'number' ? placeAtDistance(layout, distanceMm) : null
      if (found === null || typeof distanceMm !== 'number') return
      setTyped({ layout, placeMm: found, distanceMm })
      onPlace(found)
    },
    keepDraft: nothing,
    dropDraft: nothing,
  }
  return (
    <section className="place-picker" aria-label={SIDES_WORDS.picker}>
      <LengthField
        key={binding.name}
        label={`${ALONG_WORDS[along]}, ${ORIGIN_WORDS[origin].from}`}
        binding={binding}
        range={{ type: 'length', quantity: 'bodyLength', ...range }}
        units={units}
      />
      <div className="commands">
        <button
          className="button"
          type="button"
          disabled={toTailMm === null}
          onClick={() => toTailMm !== null && onPlace(toTailMm)}
        >
          ← {SIDES_WORDS.previous}
        </button>
        <strong className="place-name">{named ?? SIDES_WORDS.between}</strong>
        <button
          className="button"
          type="button"
          disabled={toNeckMm === null}
          onClick={() => toNeckMm !== null && onPlace(toNeckMm)}
        >
          {SIDES_WORDS.next} →
        </button>
      </div>
    </section>
  )
}
