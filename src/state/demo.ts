import { adoptFile, type TolerancesHere } from '../record/adopt.ts'
import { beginModel } from '../record/changes/model.ts'
import type { CommissionFile, ModelRecord } from '../record/commission.ts'
import { type Bundle, byPlace } from '../record/document.ts'
import { readCommissionFile } from '../record/door.ts'
import type { EditMeta } from '../record/edit.ts'
import { readPackedModel } from '../record/houseModel.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result } from '../record/result.ts'
import { putDocument } from '../storage/documents.ts'
import { readDeviceValue, writeDeviceValue } from '../storage/deviceValues.ts'
import { putMissing } from '../storage/models.ts'
import { writeDurably, type WriteProblem } from '../storage/writeDurably.ts'
import { metaOf, type StoredNeeds } from './editStored.ts'

/** True where the demo was neither taken nor declined on this device yet. */
export async function isDemoUnanswered(needs: Pick<StoredNeeds, 'database'>): Promise<boolean> {
  return (await readDeviceValue(needs.database, 'demoAnswer').catch(() => null)) === null
}

export const answerDemo = (needs: Pick<StoredNeeds, 'database'>, answer: 'taken' | 'declined' | 'removed') =>
  writeDeviceValue(needs.database, 'demoAnswer', answer)

/**
 * Takes all demo files in with the models they were begun from, in one transaction; one that is here already stays as it is. All are
 * marked as demo, whatever they say.
 */
export async function installDemo(
  needs: StoredNeeds,
  given: { readonly commissions: readonly unknown[]; readonly models: readonly unknown[] },
  tolerancesHere: TolerancesHere,
): Promise<Result<null, DoorProblem | WriteProblem>> {
  const bundles: Bundle[] = []
  const modelIds = new Set<string | null>()
  for (const file of given.commissions) {
    const read = readCommissionFile(file)
    if (!read.ok) return read
    const adopted = adoptFile({ ...read.value, demo: true }, tolerancesHere, asItsOwn(read.value, metaOf(needs)))
    if (!adopted.ok) return adopted
    bundles.push(adopted.value)
    modelIds.add(adopted.value.row.doc.modelAsTaken?.modelId ?? null)
  }
  const models: Bundle<ModelRecord>[] = []
  for (const model of given.models) {
    const read = readPackedModel(model)
    if (!read.ok) return read
    const { id, ...doc } = read.value
    if (!modelIds.has(id)) continue
    const begun = beginModel(id, { ...doc, demo: true }, metaOf(needs))
    if (!begun.ok) return begun
    models.push(begun.value)
  }
  const { documents, changes, facts, heads } = needs.database.dexie
  const saved = await writeDurably(needs.database, [documents, changes, facts, heads], async () => {
    for (const bundle of bundles) {
      if ((await documents.get(bundle.row.id)) !== undefined) continue
      await putDocument(needs.database, { ...bundle, allFacts: bundle.facts })
    }
    await putMissing(needs.database, models)
    return null
  })
  if (!saved.ok) return saved
  needs.onSaved?.()
  await answerDemo(needs, 'taken')
  return accept(null)
}

/** What settles a demo into this shop is entered as from the device it was begun on: whatever comes from another is the maker's. */
function asItsOwn({ changes }: CommissionFile, meta: EditMeta): EditMeta {
  return { ...meta, deviceId: changes.toSorted(byPlace)[0]?.deviceId ?? meta.newId() }
}
