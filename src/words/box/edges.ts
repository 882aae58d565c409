/** The sheet that says how the edges are cut. */
export const EDGES_WORDS = {
  ledges: 'Ledges by place',
  ledgesTreble: 'Ledges by place, treble side',
  ledgesNote:
    'Off on the dome: how much higher a guide lying on the plate leaves the floor than one held square to the side. Set it by the rows “set on the dome”, or hold it square.',
  place: 'Strip',
  cut: 'Cut',
  cutAt: 'Cut across at',
  between: 'Side between the bindings',
  strips: 'Strips to cut',
  strip: (half: string, plate: string) => `${half}, ${plate}`,
  half: { bass: 'Bass side', treble: 'Treble side' },
  plate: { top: 'top', back: 'back' },
  binding: 'Binding',
  purfling: 'Purfling',
  wedge: 'End wedge',
  backStrip: 'Back strip',
  none: 'No binding: the edges stay as the sides and plates meet.',
  noWedge: 'No end wedge.',
  noStrip: 'No strip in the back’s joint.',
  all: 'All round',
  caution:
    'A ledge cutter grabs in end grain: climb round the bouts in light passes, and never reach over a running cutter.',
} as const
