import { setStageDetail } from '../../record/changes/stages.ts'
import type { OwnStage } from '../../record/stageSchema.ts'
import type { FieldBinding } from '../../ui/fieldBinding.ts'
import { useBindingTo } from '../useBinding.ts'
import { useOrderBench } from './orderBench.ts'

/** Hangs a field on one thing of a stage; `part` tells fields of one thing apart. */
export function useDetail<Name extends keyof OwnStage, Value>(
  id: string,
  name: Name,
  value: Value,
  toOwn: (value: Value) => OwnStage[Name] | undefined,
  part = '',
): FieldBinding<Value> {
  const { docId, isLocked, change } = useOrderBench()
  return useBindingTo<Value>({
    docId,
    name: `stages.${id}.own.${name}${part}`,
    value,
    readOnly: isLocked,
    take: (next, gesture) => change(setStageDetail(id, name, toOwn(next)), gesture),
  })
}
