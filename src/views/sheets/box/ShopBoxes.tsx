import { expectedHz, shopRatio } from '../../../core/shopAir.ts'
import { figureText } from '../../../format/figure.ts'
import { formatQuantity } from '../../../format/formatQuantity.ts'
import { formatSound } from '../../../format/formatSound.ts'
import { keepTap } from '../../../record/changes/taps.ts'
import { AIR_WORDS } from '../../../words/box/air.ts'
import { useSheetBench } from '../sheetBench.ts'

/** Where this box is to be expected by what the shop's own boxes were heard at; and this one kept among them. */
export function ShopBoxes() {
  const bench = useSheetBench()
  const { computed, plan, taps, editShop, id, number, title, units } = bench
  const { rigidHz, ratio } = computed.numbers.air
  // An instrument is not told by itself.
  const others = Object.entries(taps).filter(([of]) => of !== id)
  const shop = shopRatio(others.map(([, tap]) => tap.ratio))
  const said = (hz: number) =>
    `${figureText(formatQuantity(hz, 'resonance', units))}, ${formatSound(hz, plan.strings.pitchHz)}`
  const expected = shop === null || typeof rigidHz !== 'number' ? null : expectedHz(rigidHz, shop)
  const kept = taps[id]
  return (
    <section aria-label={AIR_WORDS.shopName}>
      <h2>{AIR_WORDS.shopName}</h2>
      <p>
        {shop === null || expected === null
          ? AIR_WORDS.shopNone
          : AIR_WORDS.shopSays(shop.count, said(expected.meanHz), said(expected.leastHz), said(expected.greatestHz))}
      </p>
      {typeof ratio === 'number' && editShop !== null && (
        <div className="commands">
          <button
            className="button"
            type="button"
            disabled={bench.readOnly || kept?.ratio === ratio}
            onClick={() => editShop(keepTap(id, { number, title, ratio }), bench.newId())}
          >
            {kept === undefined ? AIR_WORDS.keep : kept.ratio === ratio ? AIR_WORDS.kept : AIR_WORDS.keptAgain}
          </button>
        </div>
      )}
    </section>
  )
}
