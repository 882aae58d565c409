import { DxfWriter, point3d, Units } from '@tarikjabiri/dxf'

/**
 * A body whose sizes have closed forms, drawn with its tail down: a circle of 190 mm round the origin, one of 140 mm round (0, 160), and
 * the two straights that touch both.
 */
const [TAIL_MM, NECK_MM, APART_MM] = [190, 140, 160]
const LEAN_RAD = Math.asin((TAIL_MM - NECK_MM) / APART_MM)
const STRAIGHT_MM = Math.sqrt(APART_MM ** 2 - (TAIL_MM - NECK_MM) ** 2)

export const EGG = {
  lengthMm: TAIL_MM + APART_MM + NECK_MM,
  widthMm: 2 * TAIL_MM,
  /** Along one half, from the tail to the neck. */
  halfMm: TAIL_MM * (Math.PI / 2 + LEAN_RAD) + STRAIGHT_MM + NECK_MM * (Math.PI / 2 - LEAN_RAD),
}

const deg = (rad: number) => (rad * 180) / Math.PI
const touching = (radiusMm: number, side: 1 | -1, upMm: number) => ({
  x: side * radiusMm * Math.cos(LEAN_RAD),
  y: upMm + radiusMm * Math.sin(LEAN_RAD),
})
const [TAIL_RIGHT, TAIL_LEFT] = [touching(TAIL_MM, 1, 0), touching(TAIL_MM, -1, 0)]
const [NECK_RIGHT, NECK_LEFT] = [touching(NECK_MM, 1, APART_MM), touching(NECK_MM, -1, APART_MM)]

interface EggDxf {
  readonly units?: Units
  readonly mmPerUnit?: number
  readonly gapMm?: number
  readonly also?: (dxf: DxfWriter) => void
}

/** As loose lines and arcs in no order, in a unit of so many mm, with a gap where the first straight begins. */
export function eggDxf({ units = Units.Millimeters, mmPerUnit = 1, gapMm = 0, also }: EggDxf = {}): string {
  const dxf = new DxfWriter()
  dxf.setUnits(units)
  const at = (x: number, y: number) => point3d(x / mmPerUnit, y / mmPerUnit)
  dxf.addLine(at(TAIL_RIGHT.x, TAIL_RIGHT.y + gapMm), at(NECK_RIGHT.x, NECK_RIGHT.y))
  dxf.addArc(at(0, 0), TAIL_MM / mmPerUnit, 180 - deg(LEAN_RAD), 360 + deg(LEAN_RAD))
  dxf.addArc(at(0, APART_MM), NECK_MM / mmPerUnit, deg(LEAN_RAD), 180 - deg(LEAN_RAD))
  dxf.addLine(at(NECK_LEFT.x, NECK_LEFT.y), at(TAIL_LEFT.x, TAIL_LEFT.y))
  also?.(dxf)
  return dxf.stringify()
}

/** As one closed path with y down, `perMm` units of the page to a mm; `right` moves the right side outward, so that the sides differ. */
export function eggSvg({ attributes = '', perMm = 1, right = 0, also = '' } = {}): string {
  const at = ({ x, y }: { x: number; y: number }) => `${(x + (x > 0 ? right : 0)) * perMm} ${-y * perMm}`
  const arc = (radiusMm: number, large: 0 | 1) => `A${radiusMm * perMm} ${radiusMm * perMm} 0 ${large} 1`
  const d = `M${at(TAIL_RIGHT)}${arc(TAIL_MM, 1)} ${at(TAIL_LEFT)}L${at(NECK_LEFT)}${arc(NECK_MM, 0)} ${at(NECK_RIGHT)}Z`
  return `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><path id="body" d="${d}"/>${also}</svg>`
}
