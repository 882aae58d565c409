import type { ReactNode } from 'react'
import './titleBlock.css'

interface Cell {
  readonly name: string
  /** Short caption over the value. */
  readonly caption: string
  readonly value: ReactNode
  /** A cell that can be tapped, and what it opens. */
  readonly opens?: { readonly label: string; readonly panelId: string }
  /** How many columns it takes; one where it is not said. */
  readonly span?: 2 | 3
}

/**
 * The block at the foot right of every sheet, with the fields ISO 7200 names that matter here: identification, title, kind of view,
 * unit, scale, revision; and whether it is safe.
 */
export function TitleBlock({ cells, label }: { readonly cells: readonly Cell[]; readonly label: string }) {
  return (
    <section className="title-block" aria-label={label}>
      <dl className="title-block-cells">
        {cells.map((cell) => (
          <div className="title-block-cell" key={cell.name} data-cell={cell.name} data-span={cell.span ?? 1}>
            <dt>{cell.caption}</dt>
            <dd>
              {cell.opens === undefined ? (
                cell.value
              ) : (
                <button
                  className="title-block-tap"
                  type="button"
                  popoverTarget={cell.opens.panelId}
                  aria-label={cell.opens.label}
                >
                  {cell.value}
                </button>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
