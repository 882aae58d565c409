/** One group of a DXF file: its code, and its value as text. Source: DXF reference, "Group codes in numerical order". */
export interface DxfGroup {
  readonly code: number
  readonly value: string
}

/** An entity with its groups in order, and (a polyline of the old kind) its vertices. */
export interface DxfEntity {
  readonly type: string
  readonly groups: readonly DxfGroup[]
  readonly vertices: readonly DxfEntity[]
}

export interface DxfContents {
  /** Values of the header's variables, the first group of each. */
  readonly header: ReadonlyMap<string, string>
  readonly entities: readonly DxfEntity[]
}

interface OpenEntity extends DxfEntity {
  readonly groups: DxfGroup[]
  readonly vertices: DxfEntity[]
}

const CODE = /^\s*-?\d{1,5}\s*$/

/** The header and the entities of a DXF text; null where it is none, or is cut short. */
export function readDxfGroups(text: string): DxfContents | null {
  const lines = text.split(/\r\n|\r|\n/)
  const header = new Map<string, string>()
  const entities: DxfEntity[] = []
  let section = ''
  let variable = ''
  let open: OpenEntity | null = null
  let polyline: OpenEntity | null = null
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const line = lines[i]!
    if (!CODE.test(line)) return null
    const code = Number(line)
    const value = lines[i + 1]!.trim()
    if (code === 999) continue
    if (code !== 0) {
      if (section === '' && code === 2) section = value
      else if (section === 'HEADER' && code === 9) variable = value
      else if (section === 'HEADER' && !header.has(variable)) header.set(variable, value)
      else open?.groups.push({ code, value })
      continue
    }
    if (value === 'EOF') return section === '' ? { header, entities } : null
    if (value === 'SECTION' || value === 'ENDSEC') {
      section = ''
      open = null
      polyline = null
    } else if (section === 'ENTITIES') {
      open = { type: value, groups: [], vertices: [] }
      if (value === 'VERTEX' && polyline !== null) polyline.vertices.push(open)
      else if (value === 'SEQEND') polyline = null
      else {
        entities.push(open)
        polyline = value === 'POLYLINE' ? open : null
      }
    }
  }
  return null
}

/** The number of a group; what is left out where the entity has none of this code. NaN where it is no number. */
export function numberOf(entity: DxfEntity, code: number, otherwise = Number.NaN): number {
  const group = entity.groups.find((one) => one.code === code)
  return group === undefined ? otherwise : readDxfNumber(group.value)
}

export const textOf = (entity: DxfEntity, code: number): string =>
  entity.groups.find((group) => group.code === code)?.value ?? ''

/** All numbers of a code, in order. */
export const numbersOf = (entity: DxfEntity, code: number): number[] =>
  entity.groups.filter((group) => group.code === code).map(({ value }) => readDxfNumber(value))

export const readDxfNumber = (value: string): number => (value === '' ? Number.NaN : Number(value))
