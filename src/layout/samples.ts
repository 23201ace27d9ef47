/** A bay that comes with the program. */
export interface Sample {
  readonly id: string
  readonly title: string
  /** From the page's own folder. */
  readonly file: string
  /** One sentence for the list of samples. */
  readonly line: string
}

/** The first one is open when the program starts for the first time. All are invented. */
export const samples: readonly Sample[] = [
  {
    id: 'kestrel-bend-house-2',
    title: 'Kestrel Bend Farm, House 2',
    file: 'bays/kestrel-bend-house-2.json',
    line: 'A gothic-arch house of 29 by 71 ft with 480 towers in six rows, two drains and one pit.',
  },
  {
    id: 'lintel-lane-lean-to',
    title: 'Lintel Lane lean-to',
    file: 'bays/lintel-lane-lean-to.json',
    line: 'One rack of 12 towers over a tote on the slab: too tall for its eave, and close to the fish tank.',
  },
  {
    id: 'old-dairy-corner',
    title: 'Old Dairy corner',
    file: 'bays/old-dairy-corner.json',
    line: 'An L-shaped room on a sloping floor, with a gas line, two posts and a heater in the way.',
  },
  {
    id: 'sallow-flats-one-acre',
    title: 'Sallow Flats, six connected bays',
    file: 'bays/sallow-flats-one-acre.json',
    line: 'An acre of 324 racks and 10,368 towers with eighteen small pits.',
  },
  {
    id: 'kestrel-bend-near-miss',
    title: 'Kestrel Bend Farm, House 2, before the shave',
    file: 'bays/kestrel-bend-near-miss.json',
    line: 'The same house from a yard with 10 ft boards only, and gutter bearers of 61 in, of which a board gives but one.',
  },
]
