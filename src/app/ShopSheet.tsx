import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { TitleBlock } from '../ui/TitleBlock.tsx'
import { useShop } from '../views/workshop.ts'
import { TITLE_BLOCK_WORDS } from '../words/instrument.ts'
import { saveEverything } from './faults.ts'
import { ROUTES, type RouteRow } from './routes.ts'
import { SafeCell } from './SafeCell.tsx'
import { SheetFrame } from './SheetFrame.tsx'
import { UnitPanel, useUnitName } from './UnitPanel.tsx'

const UNIT_PANEL = 'shop-units'

/** A sheet of the shop itself: no instrument in its title block. */
export function ShopSheet({ row, children }: { readonly row: RouteRow; readonly children: ReactNode }) {
  const name = useShop((state) => state.shop.name)
  const save = useShop((state) => state.save)
  const problem = useShop((state) => state.saveProblem)
  const unit = useUnitName()
  const words = TITLE_BLOCK_WORDS
  const foot = (
    <>
      <nav className="register" aria-label="Sheets of the shop">
        {ROUTES.filter((one) => !one.path.startsWith('/i/')).map((one) => (
          <Link key={one.path} href={one.path} aria-current={one.path === row.path ? 'page' : undefined}>
            <span>{one.name}</span>
          </Link>
        ))}
      </nav>
      <TitleBlock
        label={words.label}
        cells={[
          { name: 'shop', caption: words.shopName, value: name === '' ? words.notNamed : name, span: 2 },
          {
            name: 'unit',
            caption: words.unit,
            value: unit,
            opens: { label: words.changeUnit(unit), panelId: UNIT_PANEL },
          },
          {
            name: 'safe',
            caption: words.safe,
            value: <SafeCell save={save} problem={problem} retry={null} saveCopy={() => void saveEverything()} />,
            span: 2,
          },
        ]}
      />
      <UnitPanel id={UNIT_PANEL} />
    </>
  )
  return (
    <SheetFrame windowTitle={`${row.title} · Ribwright`} place={row.path} foot={foot}>
      {children}
    </SheetFrame>
  )
}
