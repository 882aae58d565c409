import { useMemo } from 'react'
import { FAMILIES, type Family } from '../record/family.ts'
import { useList } from './workshop.ts'

/** The family of every instrument of the shop, by its id. The same object until one comes, goes or changes its family. */
export function useFamilies(): Readonly<Record<string, Family>> {
  const told = useList((state) => state.heads.map(({ id, family }) => `${id} ${family}`).join('\n'))
  return useMemo(
    () =>
      Object.fromEntries(
        told.split('\n').flatMap((line) => {
          const [id, family] = line.split(' ')
          const known = FAMILIES.find((one) => one === family)
          return id === undefined || known === undefined ? [] : [[id, known] as const]
        }),
      ),
    [told],
  )
}
