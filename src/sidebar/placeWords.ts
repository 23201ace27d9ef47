import { type Heading, turnHeading } from '../geometry/motion'
import type { Point } from '../geometry/point'
import type { Part } from '../layout/schema'
import type { Writer } from '../units/writer'

const compassNames: Readonly<Record<Heading, string>> = { 0: 'east', 90: 'north', 180: 'west', 270: 'south' }

export const compassName = (heading: Heading): string => compassNames[heading]

/** The ends and long sides of a row by the compass; left and right as seen from its start to its end. */
export const rowSides = (heading: Heading) => ({
  start: compassName(turnHeading(heading, 2)),
  end: compassName(heading),
  left: compassName(turnHeading(heading, 1)),
  right: compassName(turnHeading(heading, 3)),
})

/** The four ways as choices: east, north, west, south. */
export const ways: readonly { readonly heading: Heading; readonly words: string }[] = [
  { heading: 0, words: 'East' },
  { heading: 90, words: 'North' },
  { heading: 180, words: 'West' },
  { heading: 270, words: 'South' },
]

/** The point that a part is placed by. */
export const placeOfPart = (part: Part): Point =>
  ('points' in part ? part.points[0] : part.at) ?? { x: 0, y: 0 }

/** A place from the two baseline strings: `5' 3" east, 34' 2" north`. */
export const placeWords = ({ x, y }: Point, { length }: Writer): string =>
  `${length(Math.abs(x))} ${x < 0 ? 'west' : 'east'}, ${length(Math.abs(y))} ${y < 0 ? 'south' : 'north'}`

/** What of a part its place is, and what its heading says. */
interface PlaceNote {
  readonly place: string
  readonly heading: string
}

type Standing = Exclude<Part, { readonly points: unknown }>

const placeNotes: Readonly<Record<Standing['kind'], PlaceNote>> = {
  'rack-row': { place: 'Start of the row, on its centre line', heading: 'Runs' },
  trough: { place: 'High end of the trough', heading: 'Runs' },
  sump: { place: 'Middle of the pit', heading: 'Its length runs' },
  'head-box': { place: 'Middle of the box', heading: 'Its length runs' },
  obstacle: { place: 'Middle of it', heading: 'Its front faces' },
  opening: { place: 'Middle of the threshold', heading: 'Into the house is' },
}

export const placeNote = ({ kind }: Standing): PlaceNote => placeNotes[kind]
