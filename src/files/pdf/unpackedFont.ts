import { unzlibSync } from 'fflate'

const WOFF = 0x774f4646
const WOFF_HEADER = 44
const WOFF_ENTRY = 20
const SFNT_HEADER = 12
const SFNT_ENTRY = 16

/**
 * A font file of the web with its tables unpacked, as a TrueType or OpenType file has them; any other file as it is. The library that embeds
 * fonts would unpack a whole table again for every sign. Source: WOFF File Format 1.0 (W3C 2012), 3 to 5.
 */
export function unpackedFont(file: Uint8Array): Uint8Array {
  const from = new DataView(file.buffer, file.byteOffset, file.byteLength)
  if (file.byteLength < WOFF_HEADER || from.getUint32(0) !== WOFF) return file
  const count = from.getUint16(12)
  const tables = Array.from({ length: count }, (_, i) => {
    const at = WOFF_HEADER + i * WOFF_ENTRY
    const [tag, offset, packed, length, checksum] = [0, 4, 8, 12, 16].map((by) => from.getUint32(at + by)) as [
      number,
      number,
      number,
      number,
      number,
    ]
    const bytes = file.subarray(offset, offset + packed)
    return { tag, checksum, bytes: packed < length ? unzlibSync(bytes) : bytes }
  })
  const padded = ({ bytes }: { readonly bytes: Uint8Array }) => (bytes.length + 3) & ~3
  const sfnt = new Uint8Array(SFNT_HEADER + count * SFNT_ENTRY + tables.reduce((sum, table) => sum + padded(table), 0))
  const to = new DataView(sfnt.buffer)
  const power = Math.floor(Math.log2(Math.max(count, 1)))
  to.setUint32(0, from.getUint32(4))
  to.setUint16(4, count)
  to.setUint16(6, 2 ** power * SFNT_ENTRY)
  to.setUint16(8, power)
  to.setUint16(10, count * SFNT_ENTRY - 2 ** power * SFNT_ENTRY)
  let at = SFNT_HEADER + count * SFNT_ENTRY
  tables.forEach((table, i) => {
    const entry = SFNT_HEADER + i * SFNT_ENTRY
    to.setUint32(entry, table.tag)
    to.setUint32(entry + 4, table.checksum)
    to.setUint32(entry + 8, at)
    to.setUint32(entry + 12, table.bytes.length)
    sfnt.set(table.bytes, at)
    at += padded(table)
  })
  return sfnt
}
