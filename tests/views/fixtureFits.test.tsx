import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import type { Fixtures } from '../../src/core/fixture.ts'
import type { Plan } from '../../src/core/plan.ts'
import { type ShopUnits, STARTING_UNITS } from '../../src/core/quantity.ts'
import { BlocksSheet } from '../../src/views/sheets/BlocksSheet.tsx'
import { FixtureFits } from '../../src/views/sheets/FixtureFits.tsx'
import { MouldFits } from '../../src/views/sheets/MouldFits.tsx'
import { DEMO_FIXTURES } from '../generators/demoFixtures.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const { plan } = STEEL_STRING
interface Given {
  readonly of?: Plan
  readonly fixtures?: Fixtures
  readonly units?: ShopUnits
}
const show = (part: React.ReactNode, { of = plan, fixtures = DEMO_FIXTURES, units = STARTING_UNITS }: Given = {}) =>
  render(
    <FakeBench watched={watchedBench(of)} fixtures={fixtures} units={units}>
      {part}
    </FakeBench>,
  )
const section = (name: string) => within(screen.getByRole('region', { name }))
/** Rise of an arc over half its chord. */
const rise = (radiusMm: number, halfMm: number) => radiusMm - Math.sqrt(radiusMm * radiusMm - halfMm * halfMm)

describe('which of the shop’s fixtures serves', () => {
  it('names the best board, its gap in the shop’s unit, where it opens, and the next', () => {
    show(<FixtureFits wanted="tailBlock" />)
    const tail = section('Which board for the tail block?')
    expect(tail.getByText('Long board')).toBeVisible()
    const gapMm = rise(950 - 2.2, 38) - rise(1000, 38)
    const nextMm = rise(600, 38) - rise(950 - 2.2, 38)
    expect(tail.getByText(gapMm.toFixed(2), { exact: false })).toHaveTextContent(/mm$/u)
    expect(tail.getByText('It opens at the ends.')).toBeVisible()
    expect(tail.getByText(/Next best/u)).toHaveTextContent(
      `Next best: Middle board, radius 600.0 mm, ${nextMm.toFixed(2)} mm, open in the middle.`,
    )
  })

  it('reads in thousandths where the shop does', () => {
    show(<FixtureFits wanted="tailBlock" />, { units: { ...STARTING_UNITS, thickness: 'thousandths' } })
    const thou = ((rise(950 - 2.2, 38) - rise(1000, 38)) / 25.4) * 1000
    expect(section('Which board for the tail block?').getByText(thou.toFixed(1), { exact: false })).toHaveTextContent(
      /thou$/u,
    )
  })

  it('says that a dish is too narrow, and what the body needs', () => {
    const small = Object.fromEntries(Object.entries(DEMO_FIXTURES).filter(([, { name }]) => name === 'Small dish'))
    show(<FixtureFits wanted="backDish" />, { fixtures: small })
    expect(screen.getByText(/Too narrow: 460\.0 mm across, and the body needs \d{3}\.\d mm/u)).toBeVisible()
  })

  it('says so where the shop has none of the kind, with the way to the shop', () => {
    show(<BlocksSheet />, { fixtures: {} })
    const tail = section('Which board for the tail block?')
    expect(tail.getByText(/The shop has no contour board/u)).toBeVisible()
    expect(tail.getByRole('link')).toHaveAttribute('href', '/shop')
    expect(section('Which board for the neck block?').getByRole('link')).toBeVisible()
  })

  it('asks for no dish where the plate is flat', () => {
    show(<FixtureFits wanted="topDish" />, { of: { ...plan, top: { ...plan.top, form: 'flat' } } })
    expect(screen.queryByRole('region')).toBeNull()
  })
})

describe('moulds and bending forms', () => {
  const wider: Plan = {
    ...plan,
    outline: {
      ...plan.outline,
      lengthMm: null,
      pieces: plan.outline.pieces.map((piece, i) =>
        i === 1 && piece.kind === 'arc' ? { ...piece, radiusMm: (piece.radiusMm ?? 0) + 3 } : piece,
      ),
    },
  }

  it('fit the outline they were made to, and no longer fit one that has grown, with the amount', () => {
    show(<MouldFits />)
    expect(section('Which mould?').getByText('Fits')).toBeVisible()
    show(<MouldFits />, { of: wider })
    const [, grown] = screen.getAllByRole('region', { name: 'Which mould?' })
    expect(within(grown!).getByText('Does not fit')).toBeVisible()
    expect(within(grown!).getByText('Too tight by').parentElement).toHaveTextContent(/Too tight by[1-3]\.\d+/u)
    expect(within(grown!).getByText(/Slid .* toward the tail end/u)).toBeVisible()
  })

  it('are kept from the instrument as it is, and then fit', async () => {
    const user = userEvent.setup()
    show(<MouldFits />, { of: wider, fixtures: {} })
    expect(section('Which mould?').getByText(/The shop has no mould/u)).toBeVisible()
    await user.click(screen.getByText('Keep this outline for the shop'))
    await user.clear(screen.getByLabelText('Name of the mould or form'))
    await user.type(screen.getByLabelText('Name of the mould or form'), 'Wide mould')
    await user.click(screen.getByRole('button', { name: 'Keep this outline as a mould of the shop' }))
    expect(section('Which mould?').getByText('Wide mould')).toBeVisible()
    expect(section('Which mould?').getByText('Fits')).toBeVisible()
    expect(screen.getByText('Wide mould is kept among the shop’s fixtures.')).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Keep this outline as a bending form' }))
    expect(section('Which bending form?').getByText('Fits')).toBeVisible()
  })
})
