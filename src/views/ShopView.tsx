import { useState } from 'react'
import { CATALOGUE, type NumberKey } from '../core/catalogue.ts'
import { UNIT_CHOICES, type LengthQuantity } from '../core/quantity.ts'
import { BENCH_LIGHTS, type BenchLight, readBenchLight, setBenchLight } from '../device/benchLight.ts'
import { pickFile } from '../device/pickFile.ts'
import type { ShopDoc } from '../record/commission.ts'
import { ChoiceField } from '../ui/ChoiceField.tsx'
import { TextField } from '../ui/TextField.tsx'
import { UNIT_KIND_WORDS, UNIT_WORDS } from '../words/instrument.ts'
import { ORIGIN_WORDS } from '../words/measuring.ts'
import { SHOP_WORDS } from '../words/shop.ts'
import { ImportDialog } from './ImportDialog.tsx'
import { ListNotice } from './list/ListNotice.tsx'
import { BuildingOrders } from './shop/BuildingOrders.tsx'
import { FixtureEditor } from './shop/FixtureEditor.tsx'
import { Offline } from './shop/Offline.tsx'
import { ShopTolerance } from './shop/ShopTolerance.tsx'
import { TappedBoxes } from './shop/TappedBoxes.tsx'
import { toleranceGroups } from './shop/toleranceGroups.ts'
import { useShopBinding } from './useBinding.ts'
import { useList, usePersistence, useWorkshop } from './workshop.ts'
import './shop.css'

const ORIGINS = ['tail', 'neckEdge', 'saddleLine'] as const satisfies readonly ShopDoc['origin'][]
const PAPERS = ['A4', 'Letter'] as const satisfies readonly ShopDoc['paperSize'][]

/** How this shop measures, what it prints on, and where all is kept. */
export function ShopView({ saveEverything }: { readonly saveEverything: () => Promise<void> }) {
  const name = useShopBinding<string>('name')
  const origin = useShopBinding<ShopDoc['origin']>('origin')
  const paper = useShopBinding<ShopDoc['paperSize']>('paperSize')
  return (
    <>
      <header className="view-head">
        <h1>{SHOP_WORDS.title}</h1>
      </header>
      <div className="shop">
        <section className="shop-part">
          <TextField label={SHOP_WORDS.name} binding={name} most={200} autoComplete="organization" />
          <h2>{SHOP_WORDS.units}</h2>
          <p className="second">{SHOP_WORDS.unitsLead}</p>
          {(['bodyLength', 'domeRadius', 'thickness'] as const).map((quantity) => (
            <UnitField key={quantity} quantity={quantity} />
          ))}
          <ChoiceField
            label={SHOP_WORDS.origin}
            binding={origin}
            choices={ORIGINS.map((value) => ({ value, label: ORIGIN_WORDS[value].name }))}
          />
          <ChoiceField
            label={SHOP_WORDS.paper}
            binding={paper}
            choices={PAPERS.map((value) => ({ value, label: SHOP_WORDS.paperSizes[value] }))}
          />
        </section>
        <section className="shop-part">
          <Keeping saveEverything={saveEverything} />
          <Light />
        </section>
      </div>
      <BuildingOrders />
      <FixtureEditor />
      <TappedBoxes />
      <Tolerances />
      <ImportDialog />
      <ListNotice />
    </>
  )
}

function UnitField({ quantity }: { readonly quantity: LengthQuantity }) {
  const binding = useShopBinding<keyof typeof UNIT_WORDS>(`units.${quantity}`)
  return (
    <ChoiceField
      label={UNIT_KIND_WORDS[quantity]}
      binding={binding}
      choices={UNIT_CHOICES[quantity].map((value) => ({ value, label: UNIT_WORDS[value] }))}
    />
  )
}

function Keeping({ saveEverything }: { readonly saveEverything: () => Promise<void> }) {
  const { importer, list } = useWorkshop()
  const answer = usePersistence((state) => state.answer)
  const hasDemo = useList((state) => state.heads.some((head) => head.demo))
  const openFile = async (): Promise<void> => {
    const file = await pickFile('.json,application/json')
    if (file !== null) await importer.openFile(file)
  }
  return (
    <>
      <h2>{SHOP_WORDS.data}</h2>
      <p>{SHOP_WORDS.dataLead}</p>
      <p>{SHOP_WORDS.persistence[answer ?? 'notAsked']}</p>
      <Offline />
      <div className="commands">
        <button className="button" type="button" onClick={() => void saveEverything()}>
          {SHOP_WORDS.saveAll}
        </button>
        <button className="button" type="button" onClick={() => void openFile()}>
          {SHOP_WORDS.openFile}
        </button>
        {hasDemo && (
          <button className="button" type="button" onClick={() => void list.removeDemo()}>
            {SHOP_WORDS.removeDemo}
          </button>
        )}
      </div>
    </>
  )
}

function Light() {
  const [light, setLight] = useState<BenchLight>(readBenchLight)
  return (
    <ChoiceField
      label={SHOP_WORDS.light}
      binding={{
        name: 'benchLight',
        value: light,
        draft: null,
        readOnly: false,
        begin: () => undefined,
        end: () => undefined,
        take: (next) => {
          setBenchLight(next)
          setLight(next)
        },
        keepDraft: () => undefined,
        dropDraft: () => undefined,
      }}
      choices={BENCH_LIGHTS.map((value) => ({ value, label: SHOP_WORDS.lights[value] }))}
    />
  )
}

const KEYS = Object.keys(CATALOGUE) as NumberKey[]
const MEASURED = KEYS.filter((key) => CATALOGUE[key].measured !== null)
const USUAL = MEASURED.filter((key) => CATALOGUE[key].tolerance !== null)

function Tolerances() {
  const [showsAll, setShowsAll] = useState(false)
  return (
    <section className="shop-tolerances">
      <h2>{SHOP_WORDS.tolerances}</h2>
      <p className="second">{SHOP_WORDS.tolerancesLead}</p>
      {toleranceGroups(showsAll ? MEASURED : USUAL).map(({ heading, keys }) => (
        <section className="tolerance-group" key={heading} aria-label={heading}>
          <h3>{heading}</h3>
          <ul className="tolerances">
            {keys.map((key) => (
              <ShopTolerance key={key} number={key} />
            ))}
          </ul>
        </section>
      ))}
      {!showsAll && (
        <button className="button" type="button" onClick={() => setShowsAll(true)}>
          {SHOP_WORDS.showAll}
        </button>
      )}
    </section>
  )
}
