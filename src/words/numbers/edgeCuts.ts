import type { KeysUnder, NumberTexts } from './numberWords.ts'

type List = 'edgePlaces' | 'trebleEdgePlaces'
type RowName = KeysUnder<'edgePlaces'> extends `edgePlaces[].${infer Name}` ? Name : never

const PLATE_SLOPE = 'Slope of the plate across its edge; derived.'
const LEANS = 'The base of the guide leans by the bevel; derived.'

const cutWords = (plate: 'top' | 'back') => ({
  bevel: {
    what: `Slope of the ${plate} across its edge; plus where the plate stands prouder inside than at its outer corner.`,
    how: null,
    formula:
      'atan of the climb inward, square to the outline. On a sphere p ÷ √(R² − d²): R dish radius, d in plan from its axis, p the part of d square to the outline.',
    from: 'Slope of the surface along the outline’s normal; derived.',
  },
  foot: {
    what: `How much a guide’s foot on the ${plate} is lifted for every 10 mm it stands inside the outer corner: so much too shallow does it cut. Minus, too deep.`,
    how: null,
    formula: '10 × tan v: v the bevel.',
    from: PLATE_SLOPE,
  },
  bindingOff: {
    what: `A guide that lies on the ${plate} leans the cutter: with the ledge right at the outer face, its inner corner comes out so much too shallow. Minus, too deep.`,
    how: null,
    formula: 't × tan v: t binding thickness, v the bevel.',
    from: LEANS,
  },
  purflingOff: {
    what: `How much higher the purfling’s floor comes out at its wall with a guide that lies on the ${plate} than with one square to the side set alike at the outer corner. The one on the dome is right here; the square one goes so much too deep into the plate. Minus, the other way.`,
    how: null,
    formula: '(t + w) × tan v: t binding thickness, w purfling width, v the bevel.',
    from: 'The plate climbs as the base of the guide does; derived.',
  },
  bindingSet: {
    what: `What to set for the binding where the guide rides on the ${plate}: from the plate at the wall of the cut down to the ledge, beside the side. Square to the side it is the binding’s height.`,
    how: `Depth gauge standing on the ${plate} at the wall of the cut, down to the ledge.`,
    formula: 'h + t × tan v: h binding height, t binding thickness, v the bevel.',
    from: LEANS,
  },
  purflingSet: {
    what: `What to set for the purfling where the guide is held square to the side: from the outer corner of the ${plate} down to the floor. Riding on the dome it is the depth entered.`,
    how: `Depth gauge square to the side, from the height of the outer corner of the ${plate} to the floor of the channel.`,
    formula: 'p − (t + w) × tan v: p purfling depth, t binding thickness, w purfling width, v the bevel.',
    from: 'The plate climbs from the outer corner to the wall of the channel; derived.',
  },
})
const [TOP, BACK] = [cutWords('top'), cutWords('back')]

const ROW_WORDS: Record<RowName, NumberTexts> = {
  alongOuterMm: {
    what: 'Where the place stands on the bent side: along its outer face, from the tail.',
    how: null,
    formula: 'Length of the outer face from the tail to the place where the curve has it.',
    from: 'Arc length; derived.',
  },
  topBevelRad: TOP.bevel,
  backBevelRad: BACK.bevel,
  topFootMm: TOP.foot,
  backFootMm: BACK.foot,
  topBindingOffMm: TOP.bindingOff,
  backBindingOffMm: BACK.bindingOff,
  topPurflingOffMm: TOP.purflingOff,
  backPurflingOffMm: BACK.purflingOff,
  topBindingSetMm: TOP.bindingSet,
  backBindingSetMm: BACK.bindingSet,
  topPurflingSetMm: TOP.purflingSet,
  backPurflingSetMm: BACK.purflingSet,
  betweenMm: {
    what: 'What shows of the side between the two bindings.',
    how: 'Caliper on the outer face, binding to binding, square to the rim plane.',
    formula: 'D + t + b − 2 × h: D the rim depth here, t and b the thicknesses of top and back, h binding height.',
    from: 'Plain sum; derived.',
  },
}

type Under<Rows extends List> = { [Name in RowName as `${Rows}[].${Name}`]: NumberTexts }
const under = <Rows extends List>(rows: Rows): Under<Rows> =>
  Object.fromEntries(Object.entries(ROW_WORDS).map(([name, words]) => [`${rows}[].${name}`, words])) as Under<Rows>

export const EDGE_CUT_WORDS: Record<KeysUnder<List>, NumberTexts> = {
  ...under('edgePlaces'),
  ...under('trebleEdgePlaces'),
}
