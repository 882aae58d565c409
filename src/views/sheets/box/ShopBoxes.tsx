import { ENOUGH_BOXES, expectedHz, shopRatio, tellsNext } from '../../../core/shopAir.ts'
import { figureText } from '../../../format/figure.ts'
import { formatQuantity } from '../../../format/formatQuantity.ts'
import { formatBand } from '../../../format/formatSound.ts'
import { keepTap } from '../../../record/changes/taps.ts'
import { AIR_WORDS } from '../../../words/box/air.ts'
import { useSheetBench } from '../sheetBench.ts'

/** Where this box is to be expected by what the shop's own boxes of its family were heard at; and this one kept among them. */
export function ShopBoxes() {
  const bench = useSheetBench()
  const { computed, taps, families, editShop, id, number, title, units } = bench
  const { ratio } = computed.numbers.air
  const text = (value: number, quantity: 'resonance' | 'ratio') => figureText(formatQuantity(value, quantity, units))
  // An instrument is not told by itself.
  const others = Object.entries(taps)
    .filter(([of]) => of !== id)
    .sort(([, a], [, b]) => a.number.localeCompare(b.number))
  const alike = others.filter(([of]) => families[of] === bench.family)
  const unlike = others.filter(([of]) => families[of] !== bench.family)
  const kept = taps[id]
  return (
    <section aria-label={AIR_WORDS.shopName}>
      <h2>{AIR_WORDS.shopName}</h2>
      <Told ratios={alike.map(([, tap]) => tap.ratio)} />
      {kept === undefined && <p>{AIR_WORDS.howToKeep}</p>}
      {alike.length > 0 && (
        <ul className="shop-boxes">
          {alike.map(([of, tap]) => (
            <li key={of}>
              {AIR_WORDS.box(tap.number, tap.title)}, {AIR_WORDS.heardAt(text(tap.ratio, 'ratio'))}
            </li>
          ))}
        </ul>
      )}
      {unlike.length > 0 && (
        <p className="second small">
          {AIR_WORDS.otherFamilies(unlike.map(([, tap]) => AIR_WORDS.box(tap.number, tap.title)).join(', '))}
        </p>
      )}
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

/** What boxes of one family say of this one, by the parts of their rigid boxes they sounded. */
function Told({ ratios }: { readonly ratios: readonly number[] }) {
  const { computed, plan, units } = useSheetBench()
  const { rigidHz } = computed.numbers.air
  const shop = shopRatio(ratios)
  if (shop === null) return <p>{AIR_WORDS.shopNone}</p>
  if (!tellsNext(shop) || typeof rigidHz !== 'number') return <p>{AIR_WORDS.shopFew(shop.count, ENOUGH_BOXES)}</p>
  const { leastHz, greatestHz, meanHz } = expectedHz(rigidHz, shop)
  const hertz = (hz: number) => figureText(formatQuantity(hz, 'resonance', units))
  const notes = formatBand(leastHz, greatestHz, plan.strings.pitchHz)
  return <p>{AIR_WORDS.shopSays(shop.count, notes, hertz(leastHz), hertz(greatestHz), hertz(meanHz))}</p>
}
