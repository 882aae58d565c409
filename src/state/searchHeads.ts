import type { Head } from '../record/commission.ts'

/** The commissions whose number, client or title hold every word of the query; capitals and accents do not count. */
export function searchHeads(heads: readonly Head[], query: string): readonly Head[] {
  const words = plain(query)
    .split(/\s+/)
    .filter((word) => word !== '')
  if (words.length === 0) return heads
  return heads.filter((head) => {
    const text = plain(`${head.number} ${head.client} ${head.title}`)
    return words.every((word) => text.includes(word))
  })
}

const plain = (text: string): string => text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase()
