import { MM_PER_INCH } from '../units/length.ts'
import { type CutPart, type PartKey, volumeMm3, type WoodRole } from './part.ts'

/** 144 cubic inches: a board a foot long, a foot wide and an inch thick, nominal. By definition (from memory: NIST Handbook 130). */
export const MM3_PER_BOARD_FOOT = 144 * MM_PER_INCH * MM_PER_INCH * MM_PER_INCH
/** A litre is a cubic decimetre: exact since 1964 (BIPM, SI brochure). */
export const MM3_PER_LITRE = 1e6

/** Thicknesses that rough-sawn boards are sold in, in quarters of an inch. Thicker ones go up by inches. Common practice. */
const QUARTERS = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16] as const
const MM_PER_QUARTER = MM_PER_INCH / 4

/** A part is sawn from a thicker board of its wood, rather than from one of its own, where its slices fill this share of it. Common practice. */
const FILLS_ENOUGH = 0.7

/** Pieces that can come out of boards of one wood and one thickness. */
export interface StockGroup {
  readonly role: WoodRole
  /** Small fittings are each of a material of their own: one part a group; 'any': all the parts of that wood. */
  readonly material: PartKey | 'any'
  /** Nominal thickness of the board in quarters of an inch, and the same in mm. */
  readonly quarters: number
  readonly nominalMm: number
  readonly rows: readonly StockRow[]
  /** Bought = rough + kerf + spare, exactly; finished is part of rough. */
  readonly finishedMm3: number
  readonly roughMm3: number
  readonly kerfMm3: number
  /** What is left over the slices in the board's thickness. */
  readonly spareMm3: number
  readonly boughtMm3: number
  readonly boardFeet: number
  readonly litres: number
}

/** All that is bought of one wood. */
export interface WoodTotal {
  readonly name: string
  readonly groups: number
  readonly boughtMm3: number
  readonly boardFeet: number
}

/** What is bought of every wood, in the order the groups come in: groups of one name together, summed before anything is rounded. */
export function totalsByWood(groups: readonly StockGroup[], nameOf: (group: StockGroup) => string): WoodTotal[] {
  const totals = new Map<string, WoodTotal>()
  for (const group of groups) {
    const name = nameOf(group)
    const before = totals.get(name) ?? { name, groups: 0, boughtMm3: 0, boardFeet: 0 }
    totals.set(name, {
      name,
      groups: before.groups + 1,
      boughtMm3: before.boughtMm3 + group.boughtMm3,
      boardFeet: before.boardFeet + group.boardFeet,
    })
  }
  return [...totals.values()]
}

export interface StockRow {
  readonly part: CutPart
  /** How many slices one place on the board gives, and how many places are wanted. */
  readonly slices: number
  readonly places: number
}

/**
 * Slices of thickness t that a board of thickness T gives with kerf k between them: floor((T + k) / (t + k)), none under 0. Bookmatched ones
 * come two and two. Derived.
 */
export function slicesFrom(boardMm: number, sliceMm: number, kerfMm: number, isBookmatched: boolean): number {
  const kerf = Math.max(kerfMm, 0)
  if (!(sliceMm > 0) || !(boardMm > 0)) return 0
  const slices = Math.floor((boardMm + kerf) / (sliceMm + kerf) + 1e-9)
  return isBookmatched ? slices - (slices % 2) : slices
}

/** The thinnest board that gives a slice, or two where they are bookmatched, in quarters of an inch. */
function quartersFor({ rough, isBookmatched }: CutPart, kerfMm: number): number {
  const neededMm = isBookmatched ? 2 * rough.thicknessMm + kerfMm : rough.thicknessMm
  const needed = neededMm / MM_PER_QUARTER - 1e-9
  return QUARTERS.find((quarters) => quarters >= needed) ?? Math.ceil(needed / 4) * 4
}

/**
 * The cut list by what it is bought as: one group for each wood and thickness of board, woods in the order of `WOOD_ROLES`'s parts, the thickest
 * board first. Every place on a board takes a kerf along its length and its width, and one between slices. `boughtMm3` is the least a
 * group needs if nothing were lost in laying out: knots, end checks and the shape of real boards come on top of it.
 */
export function groupStock(parts: readonly CutPart[], sawKerfMm: number): readonly StockGroup[] {
  const kerfMm = Math.max(sawKerfMm, 0)
  const materials = new Map<string, CutPart[]>()
  for (const part of parts) {
    const name = part.role === 'fittings' ? part.key : part.role
    materials.set(name, [...(materials.get(name) ?? []), part])
  }
  return [...materials.values()].flatMap((own) => byThickness(own, kerfMm))
}

/** One material's parts, each with the thickest board of the material that its slices fill well enough. */
function byThickness(parts: readonly CutPart[], kerfMm: number): StockGroup[] {
  const classes = [...new Set(parts.map((part) => quartersFor(part, kerfMm)))].sort((a, b) => b - a)
  const boardOf = (part: CutPart): number => {
    const own = quartersFor(part, kerfMm)
    const fills = (quarters: number) => {
      const boardMm = quarters * MM_PER_QUARTER
      const slices = slicesFrom(boardMm, part.rough.thicknessMm, kerfMm, part.isBookmatched)
      return (Math.min(slices, part.quantity) * part.rough.thicknessMm) / boardMm >= FILLS_ENOUGH
    }
    return classes.find((quarters) => quarters === own || (quarters > own && fills(quarters))) ?? own
  }
  return classes.flatMap((quarters) => {
    const own = parts.filter((part) => boardOf(part) === quarters)
    return own.length === 0 ? [] : [measureGroup(own, quarters, kerfMm)]
  })
}

function measureGroup(parts: readonly CutPart[], quarters: number, kerfMm: number): StockGroup {
  const nominalMm = quarters * MM_PER_QUARTER
  const rows = parts.map((part): StockRow => {
    const slices = Math.max(slicesFrom(nominalMm, part.rough.thicknessMm, kerfMm, part.isBookmatched), 1)
    return { part, slices, places: Math.ceil(part.quantity / slices) }
  })
  let [finishedMm3, roughMm3, kerfMm3, boughtMm3] = [0, 0, 0, 0]
  for (const { part, slices, places } of rows) {
    const { lengthMm, widthMm, thicknessMm } = part.rough
    const faceMm2 = lengthMm * widthMm
    const placeMm2 = (lengthMm + kerfMm) * (widthMm + kerfMm)
    finishedMm3 += part.quantity * volumeMm3(part.finished)
    roughMm3 += part.quantity * volumeMm3(part.rough)
    boughtMm3 += places * placeMm2 * nominalMm
    kerfMm3 += places * (placeMm2 - faceMm2) * nominalMm
    for (let place = 0; place < places; place++) {
      const sawn = Math.min(slices, part.quantity - place * slices)
      const leftMm = nominalMm - sawn * thicknessMm - (sawn - 1) * kerfMm
      // The last slice is sawn off what is left over it, if anything is.
      kerfMm3 += faceMm2 * ((sawn - 1) * kerfMm + Math.min(kerfMm, Math.max(leftMm, 0)))
    }
  }
  const { role, key } = parts[0]!
  return {
    role,
    material: role === 'fittings' ? key : 'any',
    quarters,
    nominalMm,
    rows,
    finishedMm3,
    roughMm3,
    kerfMm3,
    spareMm3: Math.max(boughtMm3 - roughMm3 - kerfMm3, 0),
    boughtMm3,
    boardFeet: boughtMm3 / MM3_PER_BOARD_FOOT,
    litres: boughtMm3 / MM3_PER_LITRE,
  }
}
