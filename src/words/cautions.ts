import type { CautionKey } from '../record/patterns/cautions.ts'

/** What can hurt, and what is usually done about it. `short` stands at the stage; `full` is read once, before the work begins. */
export interface CautionWords {
  readonly title: string
  readonly short: string
  readonly full: readonly string[]
}

/** Usual cautions of the trade. They do not replace label, safety data sheet or local codes, and each legal fact carries its date. */
export const CAUTION_WORDS: Readonly<Record<CautionKey, CautionWords>> = {
  woodDust: {
    title: 'Wood dust',
    short: 'Extract at the machine, fitted mask, wipe damp instead of sweeping. Some woods sensitise.',
    full: [
      'Wood dust is classed as a cause of cancer in people (IARC Group 1).',
      'Recommended limit in air 1 mg/m³ (NIOSH REL, all wood dust); western redcedar 0.5 mg/m³ (ACGIH). Your local limit may differ: follow it.',
      'Extract where the dust is made, wear a mask that fits, wash before eating. Stop and ask a doctor if skin, eyes or breathing react.',
      'Fine dust in the air or in a bag can catch fire: no sparks, no flame, empty the bag outdoors.',
    ],
  },
  heat: {
    title: 'Hot iron, steam',
    short: 'Iron and blanket burn at once and stay hot: heatproof gloves, clear bench, never left on alone.',
    full: [
      'Heatproof gloves, dry floor, cable out of the way; water and mains stay apart behind a residual-current device.',
      'Steam burns too: open a blanket away from your face.',
      'Charring wood and warm resin give off irritating smoke: air the room.',
      'Switch off at the wall, and look again before leaving the shop.',
    ],
  },
  blades: {
    title: 'Cutters and blades',
    short: 'Guards on, work held, hands behind the edge, unplug to change a cutter. Cover eyes and ears.',
    full: [
      'Read the machine’s instructions and use its guards; push sticks for short and thin pieces.',
      'Hold the work in a jig or a vice, never in the hand, under drill or cutter. No gloves or loose sleeves near turning tools.',
      'Unplug before changing a blade or cutter. Eye and ear protection at machines.',
      'A sharp edge tool needs less force: sharpen first.',
    ],
  },
  glue: {
    title: 'Glue',
    short: 'Read the label, air the room; gloves for epoxy, cyanoacrylate, polyurethane. Mind eyes and skin.',
    full: [
      'Follow the label and the safety data sheet of the glue you have: they go before anything said here.',
      'Epoxy sensitises skin. Polyurethane and some hardeners contain isocyanates, which sensitise the lungs. Cyanoacrylate bonds skin in seconds and its vapour stings eyes; on cotton it heats up.',
      'Hide glue is hot: mind the pot.',
      'Glue in an eye or swallowed: get medical help and take the label with you.',
    ],
  },
  solvents: {
    title: 'Solvents and finishes',
    short: 'Vapour burns and harms: air well, no flame or spark; mask and gloves by the safety data sheet.',
    full: [
      'Mineral spirits give off vapour that catches fire from about 40 °C, naphtha far below room temperature: vapour creeps along the floor to a pilot light or switch.',
      'Read the safety data sheet for mask, filter, gloves and airing. A dust mask stops no vapour.',
      'Spraying needs a booth or space that your local fire and air codes allow; two-part finishes with isocyanates need supplied air or what the sheet asks.',
      'Keep small amounts, lids on, in a metal cabinet. Waste goes where your local rules send it, never down a drain.',
    ],
  },
  oilyRags: {
    title: 'Oily rags',
    short: 'Rags with drying oil can set themselves alight: dry flat outdoors, or under water in a closed metal can.',
    full: [
      'Linseed, tung, walnut, danish oil, oil varnish: a crumpled rag can set itself alight hours later.',
      'Spread each rag flat and single outdoors until it is stiff, or put it under water in a metal can with a lid. Paper, pads and dust from oiled wood as well.',
      'Take the can where your local waste rules send it.',
    ],
  },
  cites: {
    title: 'Protected species',
    short: 'Rosewood, shell, bone: keep the papers; ask your national CITES authority before a border.',
    full: [
      'Rosewoods (Dalbergia) are in CITES Appendix II under annotation #15: finished musical instruments, parts and accessories are exempt as of 26 Nov 2019; sets and loose wood are not.',
      'Brazilian rosewood (Dalbergia nigra) is in Appendix I, listed since 11 Jun 1992: a far stricter rule, also for finished instruments.',
      'Other woods, shell and animal parts are listed too, and lists change at each conference: check them on the day, and ask your national authority.',
      'Into the United States: the Lacey Act (plants covered since 22 May 2008) may ask for a declaration of species and origin.',
      'This is no legal advice.',
    ],
  },
  shellDust: {
    title: 'Shell and bone dust',
    short: 'Cut wet or with extraction at the blade, fitted mask, eyes covered.',
    full: [
      'Dust of shell and bone harms lungs and eyes, and some people become allergic.',
      'Saw and file over a down-draught or keep it wet; mask that fits, eye protection, damp-wipe the bench.',
      'Some shell and bone comes from protected animals: keep the papers.',
    ],
  },
  strings: {
    title: 'Strings under tension',
    short: 'A string that breaks whips: glasses on, face away, bring up slowly; point cut ends downward.',
    full: [
      'A string at pitch pulls with 50 to 180 N. When it breaks, or slips from its post, its end whips: cover your eyes and keep your face out of its way.',
      'Bring all strings up slowly and watch bridge, joint and head. Slacken before working on any of them.',
      'Cut ends are needles: bend them in, and throw clippings into a tin.',
    ],
  },
}
