import { useState } from 'react'
import { bringBackPattern, removePattern, renamePattern } from '../../record/changes/patterns.ts'
import type { ShopDoc } from '../../record/commission.ts'
import { Notice } from '../../ui/Notice.tsx'
import { TextField } from '../../ui/TextField.tsx'
import { FAMILY_WORDS } from '../../words/instrument.ts'
import { ORDERS_WORDS } from '../../words/stagesPlace.ts'
import { useBindingTo } from '../useBinding.ts'
import { useShop, useWorkshop } from '../workshop.ts'
import './buildingOrders.css'

type Pattern = ShopDoc['patterns'][string]

/** The building orders this shop has kept: each to be renamed and removed. */
export function BuildingOrders() {
  const { shop } = useWorkshop()
  const patterns = useShop((state) => state.shop.patterns)
  const isOpen = useShop((state) => state.status === 'ready')
  const [removed, setRemoved] = useState<{ readonly id: string; readonly pattern: Pattern } | null>(null)
  const kept = Object.entries(patterns).sort(([, a], [, b]) => a.name.localeCompare(b.name))
  return (
    <section className="building-orders" aria-labelledby="building-orders">
      <h2 id="building-orders">{ORDERS_WORDS.title}</h2>
      <p className="second">{ORDERS_WORDS.lead}</p>
      {kept.length === 0 && <p>{ORDERS_WORDS.none}</p>}
      <ul>
        {kept.map(([id, pattern]) => (
          <li key={id}>
            <NameField id={id} name={pattern.name} />
            <span className="second">
              {FAMILY_WORDS[pattern.family]}, {ORDERS_WORDS.count(Object.keys(pattern.stages).length)}
            </span>
            <button
              className="button"
              type="button"
              disabled={!isOpen}
              aria-label={ORDERS_WORDS.removeOf(pattern.name)}
              onClick={() => {
                shop.edit(removePattern(id))
                setRemoved({ id, pattern })
              }}
            >
              {ORDERS_WORDS.remove}
            </button>
          </li>
        ))}
      </ul>
      <Notice
        notice={
          removed === null
            ? null
            : {
                id: removed.id,
                sentence: ORDERS_WORDS.removed(removed.pattern.name),
                offer: {
                  word: ORDERS_WORDS.undo,
                  act: () => void shop.edit(bringBackPattern(removed.id, removed.pattern)),
                },
              }
        }
        onClose={() => setRemoved(null)}
      />
    </section>
  )
}

function NameField({ id, name }: { readonly id: string; readonly name: string }) {
  const { shop } = useWorkshop()
  const isOpen = useShop((state) => state.status === 'ready')
  const binding = useBindingTo<string>({
    docId: 'shop',
    name: `patterns.${id}.name`,
    value: name,
    readOnly: !isOpen,
    take: (next, gesture) => shop.edit(renamePattern(id, next), gesture),
  })
  return <TextField label={ORDERS_WORDS.name} binding={binding} most={120} missing={ORDERS_WORDS.missing} />
}
