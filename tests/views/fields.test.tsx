import { act, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { FIELDS } from '../../src/record/fields.ts'
import { LengthField, type LengthValue } from '../../src/ui/LengthField.tsx'
import { BriefView } from '../../src/views/BriefView.tsx'
import { useBinding } from '../../src/views/useBinding.ts'
import { useCommission, useShop } from '../../src/views/workshop.ts'
import { freshDisk } from '../storage/fixture.ts'
import { openDemoBench, showView } from './workbench.tsx'

function DepthField() {
  const units = useShop((state) => state.shop.units)
  const isOpen = useCommission((state) => state.status === 'open')
  return isOpen ? <Bound units={units} /> : null
}
function Bound({ units }: { readonly units: Parameters<typeof LengthField>[0]['units'] }) {
  const binding = useBinding<LengthValue>('plan.rim.depthAtTailMm')
  return <LengthField label="Depth" binding={binding} range={FIELDS['rim.depthAtTailMm']} units={units} />
}

async function openFirst(disk = freshDisk()) {
  const bench = await openDemoBench(disk)
  const head = bench.list.store.getState().heads.find((one) => one.number === '26-07')
  if (head === undefined) throw new Error('the demo has no 26-07')
  await bench.commission.open(head.id)
  const depth = () => bench.commission.store.getState().record?.doc.plan.rim.depthAtTailMm
  return { bench, id: head.id, depth }
}

describe('a field on the record', () => {
  it('puts each stroke in, says saved when it is, and is undone as one gesture', async () => {
    const user = userEvent.setup()
    const { bench, depth } = await openFirst()
    showView(bench, <DepthField />)
    const input = screen.getByLabelText<HTMLInputElement>('Depth')
    const before = depth()
    await user.click(input)
    await user.clear(input)
    await user.type(input, '101.25')
    expect(depth()).toBe(101.25)
    await user.tab()
    await waitFor(() => expect(bench.commission.store.getState().save).toBe('saved'))
    act(() => void bench.commission.undo())
    expect(depth()).toBe(before)
    expect(input.value).toBe('106.0')
    act(() => void bench.commission.redo())
    expect(depth()).toBe(101.25)
  })

  it('has its unreadable text back after a reload, as it was typed', async () => {
    const user = userEvent.setup()
    const disk = freshDisk()
    const { bench, id, depth } = await openFirst(disk)
    const { unmount } = showView(bench, <DepthField />)
    const before = depth()
    const input = screen.getByLabelText<HTMLInputElement>('Depth')
    await user.click(input)
    await user.clear(input)
    // No part of it can be taken on the way, however slowly it is typed.
    await user.type(input, '7/')
    await bench.drafts.flush()
    unmount()
    bench.stop()

    const again = await openDemoBench(disk)
    await again.commission.open(id)
    showView(again, <DepthField />)
    expect(screen.getByLabelText<HTMLInputElement>('Depth').value).toBe('7/')
    expect(screen.getByLabelText('Depth')).toHaveAttribute('aria-invalid', 'true')
    expect(again.commission.store.getState().record?.doc.plan.rim.depthAtTailMm).toBe(before)
  })

  it('follows the shop when its unit is changed', async () => {
    const { bench } = await openFirst()
    showView(bench, <DepthField />)
    act(() => void bench.shop.change('units.bodyLength', 'decimalInch', bench.newGesture()))
    // 106 / 25.4 = 4.17323
    expect(screen.getByLabelText<HTMLInputElement>('Depth').value).toBe('4.173')
  })
})

describe('the brief', () => {
  it('keeps what is written, and the list of instruments with it', async () => {
    const user = userEvent.setup()
    const { bench, id } = await openFirst()
    showView(bench, <BriefView />)
    const client = screen.getByLabelText(/^Client/u)
    await user.clear(client)
    await user.tab()
    await waitFor(() => expect(bench.list.store.getState().heads.find((one) => one.id === id)?.client).toBe(''))
    expect(bench.commission.store.getState().record?.doc.brief.client).toBe('')
  })
})
