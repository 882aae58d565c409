import { screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { startingStages } from '../../src/record/patterns/stages.ts'
import { ModelsView } from '../../src/views/models/ModelsView.tsx'
import { ModelView } from '../../src/views/model/ModelView.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { type Bench, openBench, showView } from './workbench.tsx'

const { plan } = STEEL_STRING
const HERON = { name: 'Heron', family: 'steelString', plan } as const

/** A bench with one model of the house and an instrument begun from it, or from none. */
async function benchWith(goesBy: 'model' | 'none' | 'noRecord') {
  const bench = await openBench()
  const modelId = valueOf(await bench.models.create(HERON))
  await waitFor(() => expect(bench.models.store.getState().models).toHaveLength(1))
  bench.models.dismiss()
  const model = goesBy === 'none' ? null : { modelId: goesBy === 'model' ? modelId : null, name: 'Heron', plan }
  const id = valueOf(
    await bench.list.create({
      number: '27-01',
      title: 'Test',
      family: 'steelString',
      model,
      plan,
      stages: startingStages('steelString'),
    }),
  )
  await bench.commission.open(id)
  return { bench, modelId, id }
}

function valueOf<Value>(answer: { readonly ok: true; readonly value: Value } | { readonly ok: false }): Value {
  if (!answer.ok) throw new Error(JSON.stringify(answer))
  return answer.value
}

const planOf = (bench: Bench) => bench.commission.store.getState().record?.doc.plan
const set = (bench: Bench, field: string, value: unknown) =>
  valueOf(bench.commission.change(`plan.${field}`, value, bench.newGesture()))
const row = (name: RegExp) => screen.getByRole('row', { name })
const cells = (name: RegExp) =>
  within(row(name))
    .getAllByRole('cell')
    .map((cell) => cell.textContent?.replaceAll('\u2009', ' '))

describe('the sheet of an instrument’s model', () => {
  it('lists what differs, as taken, today and here, and takes one field over', async () => {
    const user = userEvent.setup()
    const { bench, modelId, id } = await benchWith('model')
    showView(bench, <ModelView id={id} />)
    expect(screen.getByText(/It is as its model/u)).toBeVisible()
    set(bench, 'rim.depthAtTailMm', 104)
    set(bench, 'top.form', 'sphere')
    valueOf(await bench.models.give(modelId, { ...plan, rim: { ...plan.rim, depthAtTailMm: 108 } }))
    await waitFor(() => expect(screen.getByRole('columnheader', { name: 'Model today' })).toBeVisible())
    // What the model holds today comes from the store once it has been read again.
    await waitFor(() =>
      expect(cells(/^Rim depth at the tail/u).slice(0, 3)).toEqual(['106.0 mm', '108.0 mm', '104.0 mmits own']),
    )
    expect(screen.getAllByRole('row')).toHaveLength(3)
    expect(cells(/^Form of the top/u).slice(0, 3)).toEqual([
      'Domed, upper bout flat',
      'Domed, upper bout flat',
      'Domed to the rimits own',
    ])
    await user.click(screen.getByRole('button', { name: 'As the model was taken: Rim depth at the tail' }))
    expect(planOf(bench)?.rim.depthAtTailMm).toBe(106)
    expect(cells(/^Rim depth at the tail/u)[2]).toBe('106.0 mmas taken')
    await user.click(screen.getByRole('button', { name: 'As the model today: Rim depth at the tail' }))
    expect(cells(/^Rim depth at the tail/u)[2]).toBe('108.0 mmas the model today')
    valueOf(bench.commission.undo())
    expect(planOf(bench)?.rim.depthAtTailMm).toBe(106)
  })

  it('tells what is replaced whole in a few words', async () => {
    const { bench, id } = await benchWith('model')
    const [first, ...rest] = plan.outline.pieces
    set(bench, 'outline.pieces', [{ ...first, sweepDeg: 4 }, ...rest])
    set(bench, 'rosette.rings', {})
    set(bench, 'sideBraces.atMm', null)
    showView(bench, <ModelView id={id} />)
    expect(cells(/^Compass pieces/u).slice(0, 3)).toEqual(['10 pieces', '10 pieces', '10 pieces, changedits own'])
    expect(cells(/^Rings/u).slice(0, 3)).toEqual(['3 rings', '3 rings', 'no ringsits own'])
    expect(cells(/^Places of the side braces/u)[2]).toBe('evenly spacedits own')
  })

  it('keeps back what counts for nothing in the forms chosen, until it is asked for', async () => {
    const user = userEvent.setup()
    const { bench, id } = await benchWith('model')
    set(bench, 'outline.keyWidths.waistMm', 240)
    showView(bench, <ModelView id={id} />)
    expect(screen.getByText(/Whatever counts in the forms chosen is the same/u)).toBeVisible()
    await user.click(screen.getByRole('button', { name: /Show the one difference/u }))
    expect(cells(/^Waist \(key widths\)/u)[2]).toBe('240.0 mmits own')
  })

  it('takes all of it at once, in one step, and keeps it as taken', async () => {
    const user = userEvent.setup()
    const { bench, modelId, id } = await benchWith('model')
    showView(bench, <ModelView id={id} />)
    const take = screen.getByRole('button', { name: 'Take the model as it is today' })
    expect(take).toBeDisabled()
    set(bench, 'plates.topMm', 3)
    valueOf(await bench.models.give(modelId, { ...plan, back: { ...plan.back, radiusMm: 5000 } }))
    await waitFor(() => expect(row(/^Dome of the back/u)).toBeVisible())
    await user.click(take)
    expect(screen.getByText(/It is as its model/u)).toBeVisible()
    expect(planOf(bench)?.plates.topMm).toBe(plan.plates.topMm)
    expect(bench.commission.store.getState().record?.doc.modelAsTaken?.plan.back.radiusMm).toBe(5000)
    valueOf(bench.commission.undo())
    expect(planOf(bench)?.plates.topMm).toBe(3)
    expect(bench.commission.store.getState().record?.doc.modelAsTaken?.plan.back.radiusMm).toBe(plan.back.radiusMm)
  })

  it('gives its plan to the model, which undo takes back', async () => {
    const user = userEvent.setup()
    const { bench, id } = await benchWith('model')
    set(bench, 'rim.depthAtNeckMm', 88)
    showView(bench, <ModelView id={id} />)
    const today = () => bench.models.store.getState().models[0]?.plan.rim.depthAtNeckMm
    await user.click(screen.getByRole('button', { name: 'Give this plan to the model' }))
    await waitFor(() => expect(today()).toBe(88))
    expect(cells(/^Rim depth at the neck/u)[2]).toBe('88.0 mmas the model today')
    await user.click(await screen.findByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(today()).toBe(plan.rim.depthAtNeckMm))
  })

  it('saves its plan as a new model and goes by it; one press takes both back', async () => {
    const user = userEvent.setup()
    const { bench, modelId, id } = await benchWith('model')
    set(bench, 'plates.backMm', 2.3)
    showView(bench, <ModelView id={id} />)
    await user.type(screen.getByLabelText('Name of the new model'), 'heron ')
    await user.click(screen.getByRole('button', { name: 'Save as a model' }))
    expect(screen.getByText(/There is a model called heron already/u)).toBeVisible()
    await user.clear(screen.getByLabelText('Name of the new model'))
    await user.type(screen.getByLabelText('Name of the new model'), 'Bittern')
    await user.click(screen.getByRole('button', { name: 'Save as a model' }))
    expect(await screen.findByText(/It goes by Bittern/u)).toBeVisible()
    expect(screen.getByText(/It is as its model/u)).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(await screen.findByText(/It goes by Heron/u)).toBeVisible()
    expect(bench.commission.store.getState().record?.doc.modelAsTaken?.modelId).toBe(modelId)
    await waitFor(() =>
      expect(bench.models.store.getState().models.filter((one) => one.deletedAt === null)).toHaveLength(1),
    )
  })

  it('says so where there is no model, and lets one be chosen', async () => {
    const user = userEvent.setup()
    const { bench, id } = await benchWith('none')
    showView(bench, <ModelView id={id} />)
    expect(screen.getByText(/It goes by no model/u)).toBeVisible()
    expect(screen.queryByRole('table')).toBeNull()
    await user.click(screen.getByRole('button', { name: 'Heron' }))
    expect(screen.getByText(/It goes by Heron/u)).toBeVisible()
  })

  it('says so where the model never had a record, or was removed, and has it back', async () => {
    const user = userEvent.setup()
    const before = await benchWith('noRecord')
    const shown = showView(before.bench, <ModelView id={before.id} />)
    expect(screen.getByText(/has no record among the models here/u)).toBeVisible()
    set(before.bench, 'plates.topMm', 3)
    expect(await screen.findByText('Model as taken')).toBeVisible()
    expect(screen.queryByText('Model today')).toBeNull()
    shown.unmount()

    const { bench, modelId, id } = await benchWith('model')
    showView(bench, <ModelView id={id} />)
    valueOf(await bench.models.remove(modelId))
    expect(await screen.findByText(/was removed from the models/u)).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Bring the model back' }))
    expect(await screen.findByText(/It goes by Heron/u)).toBeVisible()
  })
})

describe('the models of the house', () => {
  const rows = () => screen.getAllByRole('row').slice(1)

  it('stand in a ledger with their sizes and the instruments that go by them', async () => {
    const { bench } = await benchWith('model')
    showView(bench, <ModelsView />)
    await waitFor(() => expect(rows()).toHaveLength(4))
    await waitFor(() => expect(cells(/Heron/u)).toEqual(expect.arrayContaining(['Steel string', '496.0 mm', 'one'])))
    expect(screen.getAllByText('came with the workbench')).toHaveLength(3)
  })

  it('are renamed where they stand, with a way back; an empty or taken name is refused', async () => {
    const user = userEvent.setup()
    const { bench } = await benchWith('model')
    showView(bench, <ModelsView />)
    const name = await screen.findByLabelText('Name of Heron')
    await user.clear(name)
    await user.tab()
    expect(screen.getByText(/Give it a name/u)).toBeVisible()
    await waitFor(() => expect(rows()).toHaveLength(4))
    await user.type(screen.getByLabelText('Name of Heron'), 'pipit FOURTEEN-fret{Enter}')
    expect(screen.getByText(/There is a model called/u)).toBeVisible()
    await user.type(screen.getByLabelText('Name of Heron'), '{Escape}')
    expect(screen.getByLabelText('Name of Heron')).toHaveValue('Heron')
    await user.type(screen.getByLabelText('Name of Heron'), ' grey{Enter}')
    expect(await screen.findByLabelText('Name of Heron grey')).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    expect(await screen.findByLabelText('Name of Heron')).toHaveValue('Heron')
  })

  it('are removed and brought back, those that came with the workbench too', async () => {
    const user = userEvent.setup()
    const { bench } = await benchWith('model')
    showView(bench, <ModelsView />)
    await user.click(await screen.findByRole('button', { name: /^Remove Pipit/u }))
    await waitFor(() => expect(rows()).toHaveLength(3))
    await user.click(screen.getByRole('button', { name: 'Show the one removed' }))
    await user.click(screen.getByRole('button', { name: /^Bring back Pipit/u }))
    await waitFor(() => expect(rows()).toHaveLength(4))
  })

  it('begin an instrument, which goes by its model', async () => {
    const user = userEvent.setup()
    const { bench } = await benchWith('model')
    const { history } = showView(bench, <ModelsView />)
    await user.click(await screen.findByRole('button', { name: /^Begin an instrument from Evenfall/u }))
    const dialog = within(await screen.findByRole('dialog'))
    expect(await dialog.findByRole('radio', { name: /Evenfall/u })).toBeChecked()
    await user.click(dialog.getByRole('button', { name: 'Put it on the bench' }))
    await waitFor(() => expect(history.at(-1)).toMatch(/^\/i\//u))
    const stored = bench.models.store.getState().models.find(({ name }) => name.startsWith('Evenfall'))
    await bench.commission.open(history.at(-1)?.slice('/i/'.length) ?? '')
    expect(bench.commission.store.getState().record?.doc.modelAsTaken?.modelId).toBe(stored?.id)
  })
})

describe('an instrument that came out otherwise than planned', () => {
  const readThick = (bench: Bench) =>
    valueOf(
      bench.commission.addReading({
        stageId: null,
        number: 'sides.thicknessMm',
        row: 0,
        side: 'whole',
        value: 2.45,
        alongMm: null,
        entry: null,
        typed: '2.45',
        gauge: '',
        planned: 2.2,
        replaces: null,
      }),
    )
  const modelPlans = (bench: Bench) =>
    bench.models.store.getState().models.map((model) => model.plan.rim.sideThicknessMm)

  it('is given to its model as planned, or as built', async () => {
    const user = userEvent.setup()
    const { bench, id } = await benchWith('model')
    showView(bench, <ModelView id={id} />)
    expect(screen.queryByRole('group', { name: 'What a model is given' })).toBeNull()
    readThick(bench)
    await screen.findByRole('group', { name: 'What a model is given' })
    expect(screen.getByRole('button', { name: 'Give this plan to the model' })).toBeDisabled()
    await user.click(screen.getByRole('radio', { name: 'the plan as built' }))
    await user.click(screen.getByRole('button', { name: 'Give this plan to the model' }))
    await waitFor(() => expect(modelPlans(bench)).toEqual([2.45]))
    expect(planOf(bench)?.rim.sideThicknessMm).toBe(plan.rim.sideThicknessMm)
  })

  it('becomes a new model as built', async () => {
    const user = userEvent.setup()
    const { bench, id } = await benchWith('none')
    readThick(bench)
    showView(bench, <ModelView id={id} />)
    await user.click(screen.getByRole('radio', { name: 'the plan as built' }))
    await user.type(screen.getByRole('textbox', { name: 'Name of the new model' }), 'Heron, as it came out')
    await user.click(screen.getByRole('button', { name: 'Save as a model' }))
    await waitFor(() => expect(modelPlans(bench)).toContain(2.45))
  })
})
