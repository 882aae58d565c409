import { useMemo } from 'react'
import { type BoardLayout, layOutBoards, layoutPart } from '../../../core/wood/boardLayout.ts'
import { type CutPart, WOOD_ROLES, type WoodRole } from '../../../core/wood/part.ts'
import type { StockBoard } from '../../../core/wood/placement.ts'
import { inOrder } from '../../../record/order.ts'
import { CUTTING_WORDS } from '../../../words/box/cutting.ts'
import { partName, UNPLACED_WORDS, WOOD_ROLE_NAMES, WOOD_WORDS } from '../../../words/wood.ts'
import { FigureRows } from '../FigureRows.tsx'
import { useKeptWhileOpen } from '../keptWhileOpen.ts'
import { useSheetBench } from '../sheetBench.ts'
import { LaidPlank } from './LaidPlank.tsx'

const words = CUTTING_WORDS.layout

/** A plank of one wood, with its place among all planks. */
export interface NamedPlank {
  readonly name: string
  readonly board: StockBoard
}

/** The parts of each wood, laid out on the planks that there are of it. */
export function PlankLayouts({ parts }: { readonly parts: readonly CutPart[] }) {
  const { planks } = useSheetBench().plan.cutting
  const byRole = useMemo(() => {
    const named = inOrder(planks).map(([id, plank], i) => ({
      role: plank.role,
      name: CUTTING_WORDS.planks.plank(i + 1),
      board: { id, lengthMm: plank.lengthMm, widthMm: plank.widthMm, thicknessMm: plank.thicknessMm },
    }))
    return WOOD_ROLES.map((role) => ({
      role,
      planks: named.filter((one) => one.role === role),
      parts: parts.filter((part) => part.role === role),
    }))
  }, [planks, parts])
  const without = byRole.filter((one) => one.planks.length === 0 && one.parts.length > 0)
  return (
    <section className="plank-layouts" aria-label={words.heading}>
      <h2>{words.heading}</h2>
      {without.length === byRole.length ? (
        <p>{words.how}</p>
      ) : (
        byRole.map((one) => one.planks.length > 0 && <RoleLayout key={one.role} {...one} />)
      )}
      {without.length > 0 && (
        <p className="second">{words.without(without.map(({ role }) => WOOD_ROLE_NAMES[role]).join(', '))}</p>
      )}
    </section>
  )
}

interface RoleProps {
  readonly role: WoodRole
  readonly planks: readonly NamedPlank[]
  readonly parts: readonly CutPart[]
}

interface Laid extends Pick<RoleProps, 'planks' | 'parts'> {
  readonly layout: BoardLayout
  /** All that the layout hangs on, to be told from what stands now. */
  readonly asked: string
}

/** One wood: laid out when it is asked for, for it takes a while. */
function RoleLayout({ role, planks, parts }: RoleProps) {
  const { plan } = useSheetBench()
  const { kerfMm, trimMm, woods } = plan.cutting
  const [laid, keep] = useKeptWhileOpen<Laid | null>(`cutting.laid.${role}`, null)
  const asked = useMemo(() => JSON.stringify([parts, planks, kerfMm, trimMm]), [parts, planks, kerfMm, trimMm])
  const layOut = (): void => {
    const boards = planks.map(({ board }) => board)
    keep({ planks, parts, asked, layout: layOutBoards(parts.map(layoutPart), boards, { kerfMm, trimMm }) })
  }
  const name = WOOD_ROLE_NAMES[role]
  const isOld = laid !== null && laid.asked !== asked
  return (
    <section aria-label={name} data-laid={laid !== null && !isOld}>
      <h3>{woods[role] === '' ? name : `${name}: ${woods[role]}`}</h3>
      {role === 'fittings' && <p>{words.fittings}</p>}
      {parts.length === 0 ? (
        <p>{words.noParts}</p>
      ) : (
        <div className="commands">
          <button
            className="button"
            type="button"
            aria-label={`${laid === null ? words.layOut : words.again}: ${name}`}
            onClick={layOut}
          >
            {laid === null ? words.layOut : words.again}
          </button>
          <output className={isOld ? '' : 'second small'}>
            {laid === null ? words.notLaid : isOld ? words.changed : words.note}
          </output>
        </div>
      )}
      {laid !== null && parts.length > 0 && <Layout {...laid} isOld={isOld} name={name} />}
    </section>
  )
}

function Layout({ layout, planks, parts, isOld, name }: Laid & { readonly isOld: boolean; readonly name: string }) {
  const partOf = (id: string) => parts.find((part) => part.id === id)
  const nameOf = (id: string): string => {
    const part = partOf(id)
    return part === undefined ? id : partName(part)
  }
  return (
    <div className="plank-layout" data-old={isOld}>
      {layout.unplaced.length > 0 && (
        <section aria-label={`${words.unplaced}: ${name}`}>
          <h4>{words.unplaced}</h4>
          <FigureRows
            caption={`${words.unplaced}: ${name}`}
            table={{
              columns: [
                { heading: WOOD_WORDS.columns.part, quantity: null },
                { heading: WOOD_WORDS.columns.quantity, quantity: 'count' },
                { heading: words.reason, quantity: null },
              ],
              rows: layout.unplaced.map(({ partId, quantity, reason }) => [
                nameOf(partId),
                quantity,
                UNPLACED_WORDS[reason],
              ]),
            }}
          />
        </section>
      )}
      {layout.boards.map((sawn) => {
        const plank = planks.find(({ board }) => board.id === sawn.boardId)
        return plank === undefined ? null : <LaidPlank key={sawn.boardId} plank={plank} sawn={sawn} nameOf={nameOf} />
      })}
    </div>
  )
}
