import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/** A row whose leaves cover x 30 to 96 and y 94 to 346, up to about 73 in. */
const row = (): Sketch => bay('30 x 60 ft').row('A', [63, 100], { racks: 2 })

const heater = (underside: number): Sketch =>
  row().obstacle('heater', 'Heater', { x: [40, 80], y: [200, 230] }, 270, { underside, top: 110 })

// Geometry.
ruleTable('body-overlap', {
  passes: [
    ['rows that only touch', row().row('B', [129, 100], { racks: 2 })],
    ['a post that only touches the leaves', row().post('Post', [98, 200])],
    ['a heater hung over the bars', heater(80)],
    [
      'a drain that ends in its pit',
      bay('30 x 60 ft')
        .drain('D', [
          [50, 50],
          [200, 50],
        ])
        .pit('Pit', { x: [190, 226], y: [0, 100] }),
    ],
    [
      'two drains that join',
      bay('30 x 60 ft')
        .drain('D', [
          [50, 50],
          [200, 50],
        ])
        .drain('E', [
          [100, 200],
          [100, 50],
        ]),
    ],
    [
      'a footing beside a trench',
      bay('30 x 60 ft')
        .drain('D', [
          [50, 50],
          [200, 50],
        ])
        .post('Post', [100, 61], { footing: 12, footingDeep: 24 }),
    ],
    [
      'a post over a pit',
      bay('30 x 60 ft')
        .pit('Pit', { x: [100, 136], y: [50, 150] })
        .post('Post', [118, 100]),
    ],
  ],
  fails: [
    [
      'rows 1 in into each other',
      row().row('B', [128, 100], { racks: 2 }),
      'Clash, 1 of 0',
      'A (leaves) runs 1" into B (leaves). Move A 1" west.',
    ],
    [
      'a post among the leaves',
      row().post('Post', [96, 200]),
      'Clash, 2 of 0',
      'A (leaves) runs 2" into Post (post). Move A 2" west.',
    ],
    [
      'a heater hung lower than the bars',
      heater(70),
      'Clash, 50 of 0',
      'A (leaves) runs 50" into Heater (equipment). Move A 50" east.',
    ],
    [
      'a trench through a footing',
      bay('30 x 60 ft')
        .drain('D', [
          [50, 50],
          [200, 50],
        ])
        .post('Post', [100, 60], { footing: 12, footingDeep: 24 }),
      'Clash, 1 of 0',
      'D (trench) runs 1" into Post (footing). Move D 1" south.',
    ],
    [
      'a pit through a footing',
      bay('30 x 60 ft')
        .pit('Pit', { x: [100, 136], y: [50, 150] })
        .post('Post', [140, 100], { footing: 12, footingDeep: 36 }),
      'Clash, 2 of 0',
      'Pit (pit) runs 2" into Post (footing). Move Pit 2" west.',
    ],
  ],
})
