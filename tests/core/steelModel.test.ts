import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { rimRowAt } from '../../src/core/instrument/rim.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { readSteelModel } from '../tables/readTable.ts'
import { DEG, expectWithin } from './within.ts'

// Derived by a program of its own and checked by a second: see `about` in the table. It is written to 0.01.
const known = readSteelModel()
const { numbers, geometry, findings } = compute(STEEL_STRING.plan)
const TO = 0.01

describe('the steel-string model against the table worked out for it', () => {
  test('closes', () => {
    const { alongMm, acrossMm, cornerRad } = geometry.outline.closure
    expectWithin(alongMm, known.closure['end_x_minus_L']!, TO)
    expectWithin(acrossMm, known.closure['end_y']!, TO)
    expectWithin(cornerRad / DEG, known.closure['end_heading_error_deg']!, TO)
  })

  test('bouts and waist are where they were found', () => {
    expectWithin(numbers.body.lowerBoutMm, known.found['lower']!, TO)
    expectWithin(numbers.body.upperBoutMm, known.found['upper']!, TO)
    expectWithin(numbers.body.waistMm, known.found['waist']!, TO)
    // Places, the half length and the area stand in the table with fewer digits.
    expectWithin(numbers.body.lowerBoutAtMm, known.found['lower_x']!, 0.05)
    expectWithin(numbers.body.upperBoutAtMm, known.found['upper_x']!, 0.05)
    expectWithin(numbers.body.halfLengthMm, known.found['half_length_outer']!, 0.05)
    expectWithin(numbers.body.areaMm2, known.found['area_whole_mm2']!, 0.5)
  })

  test('scale, saddle line and board', () => {
    expectWithin(numbers.scale.jointToSaddleMm, known.scale['fret_joint_to_saddle']!, TO)
    expectWithin(numbers.scale.saddleLineMm, known.scale['saddle_x_uncompensated']!, TO)
    expectWithin(numbers.scale.boardEndMm, known.scale['board_end_x']!, TO)
    expectWithin(numbers.soundhole.centreToBoardEndMm, known.scale['ring_centre_to_board_end']!, TO)
    // The table's saddle stands further back by its mean compensation, 3.4.
    expectWithin(
      geometry.top.plate.heightMm(numbers.scale.saddleLineMm - 3.4, 0),
      known.scale['top_height_at_saddle']!,
      TO,
    )
  })

  // The table takes the board as parallel, as wide as its end, and 6 longer than to its last fret, the twentieth, unrounded. With its taper
  // a ring is hidden over up to 0.3 degrees less.
  const { plan } = STEEL_STRING
  const endMm = numbers.board.widthAtEndMm
  const parallel = compute({
    ...plan,
    board: { ...plan.board, nutWidthMm: endMm, widthAtTwelfthMm: endMm },
  })
  test.each(known.rings.map((ring, i) => [ring.ri, ring.ro, ring.hidden_deg, i]))(
    'the ring %d to %d is hidden over %d degrees',
    (inner, outer, degrees, i) => {
      const ring = parallel.numbers.rosette.rings[i]!
      expect([ring.innerRadiusMm, ring.outerRadiusMm]).toEqual([inner, outer])
      expectWithin(ring.hiddenRad / DEG, degrees, TO)
      expectWithin(numbers.rosette.rings[i]!.hiddenRad / DEG, degrees, 0.3)
    },
  )

  const column = (name: string) => known.rim_stations_cols.indexOf(name)
  test.each(known.rim_stations.map((row) => [row[0]!, row]))('the side %d along it', (sMm, row) => {
    const found = rimRowAt(geometry.rimSite, sMm)
    const same = (name: string, value: number, tolerance = TO) =>
      expectWithin(value, row[column(name)]!, tolerance, name)
    // The table's own arc lengths are rounded to 0.01, which moves a place by as much again.
    same('s_blank', found.alongBlankMm, 2 * TO)
    same('x', found.xMm, 2 * TO)
    same('y', found.yMm, 2 * TO)
    same('top_edge_z', found.topEdgeMm)
    same('back_edge_z', found.backEdgeMm)
    same('side_depth', found.depthMm)
    same('blank_width_to_cut', found.cutWidthMm)
    same('back_bevel_across_edge_deg', found.backBevelRad / DEG)
  })

  test('blank, waist mark and depths', () => {
    expectWithin(numbers.sides.blankLengthMm, known.blank_to_buy.length, 0.05)
    expectWithin(numbers.sides.blankWidthMm, known.blank_to_buy.width, 0.05)
    expectWithin(numbers.sides.waistMarkOnBlankMm, known.waist_mark_on_blank, TO)
    expectWithin(numbers.back.axisAtMm, known.back_axis_x, 0.05)
    expectWithin(numbers.sides.deepestInsideMm, known.largest_depth_between_domes, TO)
    expectWithin(numbers.sides.bodyDepthAtTailMm, known.finished_depth_tail_with_plates, TO)
  })

  test('the set of the neck, as built and as the same geometry asks without the rise', () => {
    const { strung, built } = known.neck_set
    const { neckSet, top } = numbers
    expectWithin(neckSet.angleRad / DEG, built['neck_angle_deg']!, TO)
    expectWithin(top.neckEdgeMm, built['neck_edge_z']!, TO)
    expectWithin(neckSet.fretPlaneOverTopMm, built['fret_plane_over_top_at_saddle']!, 1e-9)
    expectWithin(neckSet.fretPlaneOverBridgeMm, built['over_bridge_top']!, 1e-9)
    expectWithin(neckSet.faceAtNutMm, built['neck_face_at_nut']!, 2 * TO)
    expectWithin(neckSet.angleStrungRad / DEG, strung['neck_angle_deg']!, TO)
    expectWithin(geometry.neck.strung.edgeMm, strung['neck_edge_z']!, TO)
    expectWithin(neckSet.fretPlaneOverTopStrungMm, strung['fret_plane_over_top_at_saddle']!, 1e-9)
    expectWithin(neckSet.fretPlaneOverBridgeStrungMm, strung['over_bridge_top']!, 1e-9)
    const { shape, strung: line } = geometry.neck
    expectWithin(line.edgeMm - (shape.nutMm - shape.jointMm) * line.slope, strung['neck_face_at_nut']!, 2 * TO)
    // The board lies on the flat: no room under it anywhere.
    for (const { gapMm } of neckSet.gaps) expectWithin(gapMm, 0, 1e-6)
  })

  test('the board over the body, and what the strings pull', () => {
    expectWithin(numbers.board.overBodyMm, known.board['end_beyond_joint']!, TO)
    expectWithin(numbers.board.widthAtJointMm, known.board['width_at_joint']!, TO)
    expectWithin(numbers.board.widthAtEndMm, known.board['width_at_end']!, TO)
    known.strings.tension_N.forEach((newtons, i) => expectWithin(numbers.strings[i]!.tensionN, newtons, 0.06))
    expectWithin(numbers.stringSet.tensionN, known.strings.total_N, 0.5)
    expectWithin(numbers.stringSet.torqueNm, known.strings.bridge_torque_Nm, TO)
  })

  test('nothing about it needs a finding', () => expect(findings).toEqual([]))
})
