import { gpm } from '../../../src/units/flow'
import { feet } from '../../../src/units/length'
import { bay, type Sketch, type Spot } from '../bay'

/** Roof of the lean-to: 72 in at either long wall, 96 in along the middle. */
const ROOF: readonly Spot[] = [
  [0, 72],
  [46, 96],
]

/** A fountain pump, invented: gallons a minute and feet. */
const FOUNTAIN_PUMP = [
  [0, 6.4],
  [1, 5.9],
  [2, 5],
  [3, 3.5],
  [4, 1.5],
].map(([flow = 0, head = 0]) => ({ flowLph: gpm(flow), headMm: feet(head) }))

/** The tote stands on the slab: nothing is dug. All levels above the slab. */
const TOTE = {
  rim: 15.5,
  overflow: 11,
  drainBack: 10,
  running: 8,
  makeUp: 7,
  lowAlarm: 5.5,
  pumpOff: 4.5,
  bottom: 0.5,
  pump: 'own',
  curve: FOUNTAIN_PUMP,
  discharge: 'pe-1',
  filter: 'none',
  lining: 'none',
} as const

/** One rack, raised so that it drains into a tote on the slab: with 48 in towers it asks for more height than the eave gives. */
export const lintelLane = (): Sketch =>
  bay('92 x 140 in', 'Lintel Lane lean-to')
    .house({ headroom: 96 })
    .curved(1, ROOF)
    .curved(3, ROOF)
    .benchmark('Corner of the slab', [0, 0], 0)
    .door('South door', [46, 0], { width: 30, height: 78, swing: 'out', access: 'people' })
    .obstacle('tank', 'Fish tank, 50 gal', { x: [3, 33], y: [103, 133] }, 0, { shape: 'round', top: 36 })
    .obstacle('tap', 'Spigot', { x: [86, 90], y: [134, 138] }, 180, { underside: 18, top: 30 })
    .row('Row 1', [70, 30], {
      racks: 1,
      rackLength: 96,
      barsPerRack: 6,
      lines: 2,
      lineSpacing: 20,
      railSpacing: 30,
      midPairs: 1,
      tower: 48,
      sites: 7,
      bearerTop: 20,
      fallsTo: 'start',
      inlet: 'start',
      outletBore: '3/4',
      laterals: 1,
      lateral: 'pe-1/2',
    })
    .drain(
      'Drain',
      [
        [80, 54],
        [32, 54],
      ],
      {
        pipe: 'drain-2in',
        slope: 1 / 4,
        startInvert: 13.5,
        cover: 0,
        bed: 0,
        trench: 4,
      },
    )
    .pit('Tote, 30 gal', { x: [8, 32], y: [45, 63] }, TOTE)
    .main(
      'Main',
      [
        [20, 58],
        [58, 58],
      ],
      { pipe: 'pe-1', height: 12 },
    )
    .settings({ place: 'Lintel Lane', cart: 18, workAisle: 24 })
