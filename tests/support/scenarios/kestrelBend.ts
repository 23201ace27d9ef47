import { bay, type Sketch, type Spot } from '../bay'

/** Row centrelines, in from the west wall: 30 in of floor, then canopies of 66 in with aisles of 36 in between. */
const CENTRES = [63, 165, 267] as const

/** The 2 in main feeds rows 2 and 3; row 1 has one of its own. */
const mainOf = (row: number): string => (row === 0 ? 'main-2' : 'main-1')

/** Turns of the trim valves by the bay's own valve card at 4 gph a tower: 6.4 gpm to each north row, 4.27 to each south one. */
const TRIMS = { N: [0.895, 0.918, 0.909], S: [0.547, 0.557, 0.555] } as const

/** Gothic arch: headroom at distances in from either long wall. */
const ARCH: readonly Spot[] = [
  [0, 66],
  [6, 74],
  [12, 80],
  [18, 86],
  [24, 92],
  [176, 168],
]

/** Hoop legs stand in the thickness of the long walls, every 48 in. */
const HOOP_LEGS = Array.from({ length: 18 }, (_, k) => 20 + 48 * k)

const HOOP_LEG = { shape: 'round', length: 2.5, width: 2.5, top: 66, footing: 12, footingDeep: 36 } as const

const withHoopLegs = (sketch: Sketch): Sketch =>
  HOOP_LEGS.reduce(
    (at, y, k) =>
      at.post(`West leg ${k + 1}`, [-1.25, y], HOOP_LEG).post(`East leg ${k + 1}`, [353.25, y], HOOP_LEG),
    sketch,
  )

/** What a telling of the bay changes. */
interface Telling {
  readonly title?: string
  /** Where the rows of the north block start, inches from the south wall. */
  readonly northStart?: number
  /** How far each bearer reaches past its outer trough, inches; the schema's own where it is left out. */
  readonly bearerEnd?: number
}

const TITLE = 'Kestrel Bend Farm, House 2'

const withRows = (sketch: Sketch, { northStart = 410, bearerEnd }: Telling): Sketch => {
  const ends = bearerEnd === undefined ? {} : { bearerEnd }
  return CENTRES.reduce(
    (at, x, k) =>
      at
        .row(`N${k + 1}`, [x, northStart], {
          racks: 3,
          fallsTo: 'start',
          inlet: 'start',
          waterFrom: mainOf(k),
          trimTurns: TRIMS.N[k] ?? null,
          ...ends,
        })
        .row(`S${k + 1}`, [x, 96], {
          racks: 2,
          fallsTo: 'end',
          inlet: 'end',
          waterFrom: mainOf(k),
          trimTurns: TRIMS.S[k] ?? null,
          ...ends,
        }),
    sketch,
  )
}

/** The house as surveyed. Floor levels count from the north-west corner. */
const house = (title: string): Sketch =>
  bay('352 x 856 in', title)
    .house({ headroom: 168 })
    .curved(1, ARCH)
    .curved(3, ARCH)
    .level([0, 0], -2)
    .level([352, 0], -3)
    .level([352, 856], -1)
    .level([0, 856], 0)
    .benchmark('Brass nail in the sill of the south door, east end', [224, 0], -2.5)
    .buried(
      'wire',
      'Old lighting feed, 120 V',
      [
        [176, 380],
        [352, 380],
      ],
      18,
    )
    .door('South door', [176, 0], { width: 96, height: 90, leaves: 'double', swing: 'out', heading: 90 })
    .door('North door', [58, 856], { width: 36, swing: 'in', access: 'people', heading: 270 })
    .post('Post', [176, 366], { top: 168, footing: 12, footingDeep: 30 })
    .obstacle('heater', 'Heater', { x: [100, 140], y: [815, 850] }, 270, {
      underside: 84,
      top: 114,
      clearFront: 36,
      clearFrom: 48,
      clearTo: 114,
    })
    // A flush panel: its 36 in of working space counts from its face.
    .obstacle('panel', 'Panel', { x: [285, 315], y: [855.5, 856] }, 270, {
      underside: 36,
      top: 72,
      clearFront: 36,
      clearTo: 78,
    })
    .obstacle('tap', 'Tap', { x: [338, 342], y: [848, 852] }, 180, { underside: 24, top: 36 })

/** Both drains end at the pit's west wall. Mains hang over the middle aisle, above heads. */
const withWater = (sketch: Sketch): Sketch =>
  sketch
    .drain('Drain N', [
      [30, 425],
      [304, 425],
    ])
    .drain('Drain S', [
      [30, 321],
      [304, 321],
    ])
    .pit('Pit', { x: [304, 340], y: [316, 430] }, { pump: 'middle', bypassShare: 0.15 })
    .main(
      'Main to rows 3 and 2',
      [
        [322, 376],
        [165, 376],
      ],
      { pipe: 'pe-2', height: 84 },
    )
    .main(
      'Main to row 1',
      [
        [322, 384],
        [63, 384],
      ],
      { pipe: 'pe-1-1/2', height: 84 },
    )

/** The bay as it is, but for what is told otherwise. */
export const kestrelBendWith = (telling: Telling): Sketch =>
  withHoopLegs(withWater(withRows(house(telling.title ?? TITLE), telling))).settings({
    place: 'Kestrel Bend Farm, Tallow County',
  })

export const kestrelBend = (): Sketch => kestrelBendWith({})
