import { bay, type Sketch, type Spot } from '../bay'

const CORNERS: readonly Spot[] = [
  [0, 0],
  [288, 0],
  [288, 288],
  [480, 288],
  [480, 480],
  [0, 480],
]

/** The old wash-down floor: 1.5 % to the north, 0.3 % to the east. */
const floorAt = ([x, y]: Spot): number => -0.015 * y - 0.003 * x

/** Levels of a pit in the north-east, where the floor is about 7.4 in under the benchmark. */
const PIT = {
  rim: -5.5,
  overflow: -19,
  drainBack: -20,
  running: -29,
  makeUp: -30,
  lowAlarm: -33,
  pumpOff: -35,
  bottom: -43,
  // One alone keeps the towers wet while the other is out to be cleaned.
  pumps: 2,
  pump: 'small',
} as const

const house = (): Sketch =>
  CORNERS.reduce<Sketch>(
    (at, corner) => at.level(corner, floorAt(corner)),
    bay('480 x 480 in', 'Old Dairy corner').outline(CORNERS).house({ headroom: 120 }),
  )
    .curved(5, [
      [0, 60],
      [18, 78],
      [36, 90],
    ])
    .benchmark('Bolt in the south-west corner post', [0, 0], 0)
    .buried(
      'gas',
      'Gas line',
      [
        [250, 0],
        [250, 480],
      ],
      18,
    )
    .door('South door', [132, 0], { width: 72, height: 84, leaves: 'double', swing: 'out', heading: 90 })
    .door('East door', [480, 338], { width: 36, swing: 'out', access: 'people', heading: 180 })
    .post('South post', [144, 160], { top: 120 })
    .post('North post', [144, 320], { top: 120 })
    .obstacle('heater', 'Heater', { x: [6, 42], y: [444, 474] }, 270, {
      underside: 84,
      top: 108,
      clearFront: 36,
      clearFrom: 48,
      clearTo: 108,
    })
    .obstacle('panel', 'Panel', { x: [440, 470], y: [479.5, 480] }, 270, {
      underside: 36,
      top: 72,
      clearFront: 36,
      clearTo: 78,
    })
    .obstacle('floor-drain', 'Old floor drain', { x: [194, 206], y: [234, 246] }, 0, {
      shape: 'round',
      top: 0,
      clearFront: 6,
      clearBack: 6,
      clearLeft: 6,
      clearRight: 6,
      clearFrom: 0,
      clearTo: 12,
    })

/** Eight racks as first drawn; its gas crossing, heater, foot shims and row end are there to be found. */
export const oldDairy = (): Sketch =>
  house()
    .row('A', [57, 60], { racks: 3, inlet: 'end' })
    .row('B', [185, 60], { racks: 3, inlet: 'end' })
    .row('C', [287, 300], { racks: 1, inlet: 'end' })
    .row('D', [389, 300], { racks: 1, inlet: 'end' })
    // A whole first stick would put a bell under the second outlet of row B, 238 in from the pit.
    .drain(
      'Drain',
      [
        [24, 405],
        [432, 405],
      ],
      { firstStick: 94 },
    )
    .pit('Pit', { x: [432, 468], y: [375, 435] }, PIT)
    .main(
      'Main',
      [
        [450, 405],
        [450, 432],
        [57, 432],
      ],
      { height: 86 },
    )
    .settings({ place: 'Old Dairy' })
