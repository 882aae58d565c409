/** The sheet that says what goes inside the rim. */
export const LININGS_WORDS = {
  topHere: 'Top lining here, over the outer corner',
  backHere: 'Back lining here, over the outer corner',
  proudNote: 'Plus: the lining’s inner corner stands prouder than the side. Minus: it lies lower.',
  top: 'Top lining',
  back: 'Back lining',
  braces: 'Side braces',
  bracesOfBass: 'Side braces, bass side',
  bracesOfTreble: 'Side braces, treble side',
  brace: 'Brace',
  noBraces: 'No side brace finds room between the blocks.',
  place: 'Place',
  enterPlaces: 'Enter the places',
  spaceEvenly: 'Space them evenly',
  evenly: 'Spaced evenly between the blocks.',
  add: 'Add a place',
  remove: 'Remove',
  noPlaces: 'No place is entered: there are no side braces.',
  full: 'No more places fit in.',
  caul: 'A springy caul',
  caulLead:
    'Clamped at both ends until it lies straight, it presses the middle of a joint. An estimate: try it dry first.',
} as const
