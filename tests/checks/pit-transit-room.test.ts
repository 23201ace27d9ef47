import { expect, test } from 'vitest'
import { bay, type Inches, type Sketch } from '../support/bay'
import type { Sump } from '../../src/parts/sump/schema'
import { judged, mended, told } from '../support/judged'
import { ruleTable } from '../support/ruleTable'
import { kestrelBend } from '../support/scenarios/kestrelBend'

/*
 * Room for 1.25 of what comes home: common practice, no source. Hand arithmetic, 231 cubic inches a gallon. Row A has 64 towers on 4
 * lines of 240 in, and nothing feeds it, so that 4 gph a tower are reckoned with: 16 towers or 1.067 gpm a line.
 *   towers   64 x 0.15                                                                      9.60
 *   troughs  4 x 240 x 3.25 in wide x 0.1734 in deep / 231                                  2.34
 *            (1.067 gpm is 4.107 in3/s. At 0.1734 in: 0.5714 in2, wetted 3.608 in, hydraulic radius 0.1584 in or 0.0132 ft, to the power
 *            2/3 0.05585; 1/16 in a foot is 0.005208, its root 0.07217; 1.486 x 0.05585 x 0.07217 / 0.010 = 0.599 ft/s = 7.19 in/s.)
 *   drain    200 in of 4.06 in bore, 12.95 in2, a quarter: 200 x 3.237 / 231                2.80
 *   feed     laterals 480 in x 0.5333 in2, header 38 in and 5.7 in of riser over the tube ends x 0.8643, tubes 64 x 36 x 0.01227,
 *            all / 231: 1.108 + 0.142 + 0.021 + 0.122                                       1.39
 *   all 16.14, x 1.25 = 20.17 gal; the pit of 36 x 114 in holds 17.77 gal an inch.
 */
const pit = (running: number, values: Inches<Sump> = {}): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .drain('D', [
      [100, 325],
      [300, 325],
    ])
    .pit('Pit', { x: [300, 336], y: [268, 382] }, { running, pumps: 0, ...values })

const comes = '16 gal come home to Pit when its pumps stop, with a quarter more 20 gal'
const room = 'between its running level and 1" under its overflow there is room for'
const mend = 'Set the levels of Pit from its inlet down, with room for 20 gal.'

ruleTable('pit-transit-room', {
  passes: [
    ['8-1/2 in from running to drain-back: 151 gal', pit(-22.5)],
    ['1-1/4 in: 22.2 gal', pit(-15.25)],
    ['a pit that nothing comes to', bay('40 x 60 ft').pit('Pit', { x: [300, 336], y: [268, 382] })],
    ['the sample bay behind its check valve', kestrelBend()],
  ],
  fails: [
    ['1 in: 17.8 gal', pit(-15), 'Thin, 17.766 of 20.173', `${comes}; ${room} 18 gal. ${mend}`],
    [
      // To the overflow itself it is 17.8 gal, in which 16.1 find room.
      'none but the margin',
      pit(-14),
      'Thin, 0 of 20.173',
      `${comes}; ${room} 0 gal. ${mend}`,
    ],
    [
      '1/2 in to the overflow: 8.9 gal',
      pit(-13.5),
      'Spills, -8.883 of 20.173',
      `${comes}; ${room} 0 gal: it spills. ${mend}`,
    ],
  ],
})

test('without a check valve the mains of the sample bay come home too, and its room is thin', () => {
  const layout = kestrelBend().layout()
  const open = {
    ...layout,
    parts: layout.parts.map((part) => (part.kind === 'sump' ? { ...part, checkValve: false } : part)),
  }
  expect(told('pit-transit-room', open)).toEqual([
    expect.stringMatching(/^123 gal come home to Pit .* 154 gal; .* room for 151 gal\. Set the levels/),
  ])
  expect(judged('pit-transit-room', mended('pit-transit-room', open))).toEqual([])
})
