import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { judged, mended, told } from '../support/judged'
import { fedRow } from '../support/fedRow'
import { kestrelBend } from '../support/scenarios/kestrelBend'

/*
 * Even up to 10 % of spread, Drifting up to 20, Starved over it: common practice, no source. Flows are the solver's; it is held
 * against published tables elsewhere, and here only what is said of them.
 */
const RULE = 'tower-flow-even'

describe(RULE, () => {
  test('16 stations on a 3/4 in lateral a pair of lines are even', () => {
    expect(judged(RULE, fedRow())).toEqual([])
  })

  test('24 stations starve, and the far end of the far lateral is named', () => {
    const [said] = told(RULE, fedRow({ racks: 3 }))
    expect(judged(RULE, fedRow({ racks: 3 }))[0]).toMatch(/^Starved, 2\d\.\d+ of 10$/)
    expect(said).toMatch(
      /^The towers of A differ by 2\d\.\d %; 10\.0 % is even\. Line \d, station 24 gets least, \d\.\d gph\./,
    )
  })

  test('a row fed at its end is split where the main passes: it is even then, and not dry', () => {
    const north = kestrelBend().layout()
    expect(told(RULE, north)[0]).toMatch(
      /^The towers of N1 differ by 3\d\.\d %; .* Let N1 be fed in the middle\.$/,
    )
    const after = evaluate(mended(RULE, north))
    expect(after.bay.water.rows.get('rack-row-1')?.state).toBe('Even')
    expect([...after.bay.water.dry]).toEqual([])
  })

  test('a row held back by its own trim valve is told to be low, and its valve to be opened', () => {
    const held = fedRow({ racks: 2, feed: 'centre-split', riserAt: 'inlet-end', trimTurns: 1 / 4 })
    expect(told(RULE, held)[0]).toMatch(/^All of A is low\. .* Set the trim valve of A wide open\.$/)
    expect(judged(RULE, mended(RULE, held))).toEqual([])
  })

  test('a pump that gives all rows too little is told of by itself', () => {
    const short = fedRow(
      { racks: 2, feed: 'centre-split', riserAt: 'inlet-end' },
      {
        overflow: -13 - 50,
        drainBack: -14 - 50,
        running: -22.5 - 50,
        makeUp: -23.5 - 50,
        lowAlarm: -27 - 50,
        pumpOff: -29 - 50,
        bottom: -37 - 50,
      },
    )
    expect(judged('pump-flow-fit', short)[0]).toMatch(/^(Starved|Drifting), /)
    expect(judged(RULE, short)).toEqual([])
  })
})
