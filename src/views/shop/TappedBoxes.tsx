import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { dropTap } from '../../record/changes/taps.ts'
import { AIR_WORDS } from '../../words/box/air.ts'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { useFamilies } from '../useFamilies.ts'
import { useShop, useWorkshop } from '../workshop.ts'

/** The boxes the shop has tapped, each to be forgotten again. */
export function TappedBoxes() {
  const { shop, newGesture } = useWorkshop()
  const taps = useShop((state) => state.shop.taps)
  const units = useShop((state) => state.shop.units)
  const isOpen = useShop((state) => state.status === 'ready')
  const families = useFamilies()
  const boxes = Object.entries(taps).sort(([, a], [, b]) => a.number.localeCompare(b.number))
  return (
    <section className="shop-part" aria-labelledby="tapped-boxes">
      <h2 id="tapped-boxes">{AIR_WORDS.shopList}</h2>
      <p className="second">{AIR_WORDS.shopLead}</p>
      {boxes.length === 0 && <p>{AIR_WORDS.noTaps}</p>}
      <ul className="tapped-boxes">
        {boxes.map(([id, { number, title, ratio }]) => (
          <li key={id}>
            <span>
              <strong>{number}</strong> {title}
              {families[id] !== undefined && (
                <span className="second">, {FAMILY_WORDS[families[id]].toLowerCase()}</span>
              )}
            </span>
            <span>{AIR_WORDS.heardAt(figureText(formatQuantity(ratio, 'ratio', units)))}</span>
            <button
              className="button"
              type="button"
              disabled={!isOpen}
              aria-label={`${AIR_WORDS.drop}: ${number}`}
              onClick={() => void shop.edit(dropTap(id), newGesture())}
            >
              {AIR_WORDS.drop}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
