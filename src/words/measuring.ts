/** Where a maker measures from. */
export const ORIGIN_WORDS = {
  tail: { name: 'Tail', from: 'from the tail' },
  neckEdge: { name: 'Neck edge', from: 'from the neck edge' },
  saddleLine: { name: 'Saddle line', from: 'from the saddle line, plus toward the neck' },
} as const

export const ALONG_WORDS = { centreline: 'Along the centreline', outerFace: 'Round the outside' } as const

export const PLACE_WORDS = {
  tail: 'Tail',
  lowerBout: 'Lower bout',
  waist: 'Waist',
  upperBout: 'Upper bout',
  horn: 'Horn',
  neck: 'Neck',
} as const

/** How far a number is to be trusted. */
export const STANDING_WORDS = {
  exact: 'Exact: as entered, or from a closed form.',
  numeric: 'Found by steps, to far less than a hair.',
  estimate: 'An estimate. Check it on the wood.',
} as const
