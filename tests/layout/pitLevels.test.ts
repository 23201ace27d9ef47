import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { raisePit, raisePitLevels, rangeOf, setPitLevel, sizePit } from '../../src/layout/pitLevels'
import { PIT_RUNGS, type PitLevel } from '../../src/model/pitFacts'
import { pitFactsOf } from '../../src/parts/sump/pitFacts'
import { sumpSchema, type Sump } from '../../src/parts/sump/schema'
import { gallons } from '../../src/units/volume'
import { inches, onTick, toInches } from '../../src/units/length'
import { bay } from '../support/bay'
import { inchesOf } from '../support/site'

const pitOf = (values: Partial<Sump> = {}): Sump =>
  sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: { x: 0, y: 0 }, ...values })

/** Rim 0, overflow -13, drain-back -14, running -22.5, make-up -23.5, low alarm -27, pump off -29, intake -35, bottom -37. */
const pit = pitOf()

describe('a level that is dragged or typed', () => {
  test.each<[string, PitLevel, number, number, PitLevel | undefined]>([
    ['goes where there is room', 'runningMm', -20, -20, undefined],
    ['stops at the level over it', 'runningMm', -5, -14, 'drainBackMm'],
    ['stops at the level under it', 'runningMm', -30, -23.5, 'makeUpMm'],
    ['keeps the inch that is wanted under the overflow', 'drainBackMm', -2, -14, 'overflowMm'],
    ['keeps it from over it too', 'overflowMm', -20, -13, 'drainBackMm'],
    ['goes over the floor as a rim', 'rimMm', 4, 4, undefined],
    ['goes as deep as one digs', 'bottomMm', -60, -60, undefined],
    // An intake left to the program is carried 2 in over the bottom: it meets pump off at -29 with the bottom at -31.
    ['takes the intake up with a bottom', 'bottomMm', -20, -31, 'pumpOffMm'],
    ['makes an intake the builder’s own', 'intakeMm', -36, -36, undefined],
    ['keeps an intake over the bottom', 'intakeMm', -50, -37, 'bottomMm'],
  ])('%s', (_, level, toIn, atIn, stoppedBy) => {
    const moved = setPitLevel(pit, level, inches(toIn))
    expect([inchesOf(pitFactsOf(moved.pit)[level]), moved.stoppedBy]).toEqual([atIn, stoppedBy])
    expect(toInches(moved.byMm)).toBeCloseTo(atIn - toInches(pitFactsOf(pit)[level]), 6)
  })

  test('stays, where its neighbours leave it no room', () => {
    const odd = pitOf({ lowAlarmMm: inches(-29), pumpOffMm: inches(-27), intakeMm: inches(-28) })
    const moved = setPitLevel(odd, 'lowAlarmMm', inches(-28))
    expect([inchesOf(moved.pit.lowAlarmMm), moved.stoppedBy]).toEqual([-27, 'pumpOffMm'])
    const none = pitOf({ makeUpMm: inches(-10) })
    const { lowestMm, highestMm } = rangeOf(none, 'runningMm')
    expect(lowestMm).toBeGreaterThan(highestMm)
    expect(setPitLevel(none, 'runningMm', 0)).toMatchObject({ pit: none, byMm: 0 })
  })

  test('leaves levels in order wherever each is dragged, and the pit one that a file holds', () => {
    const drag = fc.record({
      level: fc.constantFrom(...PIT_RUNGS.map(({ level }) => level)),
      toMm: fc.integer({ min: -2000, max: 500 }),
    })
    fc.assert(
      fc.property(fc.array(drag, { maxLength: 12 }), (drags) => {
        const after = drags.reduce((at, { level, toMm }) => setPitLevel(at, level, toMm).pit, pit)
        const facts = pitFactsOf(after)
        for (const [index, { level, nextUnderMm }] of PIT_RUNGS.entries()) {
          const next = PIT_RUNGS[index + 1]
          if (next) expect(facts[level] - facts[next.level]).toBeGreaterThanOrEqual(nextUnderMm - 0.01)
        }
        expect(sumpSchema.parse(after)).toEqual(after)
      }),
      { seed: 20_251_126, numRuns: 200 },
    )
  })
})

describe('a pit that is raised', () => {
  test('takes all its levels along but the rim', () => {
    const { pit: after, byMm, stoppedBy } = raisePitLevels(pit, inches(2))
    expect([inchesOf(byMm), stoppedBy]).toEqual([2, undefined])
    expect([after.rimMm, after.overflowMm, after.runningMm, after.bottomMm].map(inchesOf)).toEqual([
      0, -11, -20.5, -35,
    ])
  })

  test('goes no higher than its overflow under the rim, and as deep as asked', () => {
    expect(raisePitLevels(pit, inches(20))).toMatchObject({ byMm: onTick(inches(13)), stoppedBy: 'rimMm' })
    expect(inchesOf(raisePitLevels(pit, inches(-40)).pit.bottomMm)).toBe(-77)
  })

  test('is an edit that leaves what is no pit, and what does not move, as it was', () => {
    const layout = bay('30 x 96 ft')
      .pit('Pit', { x: [100, 136], y: [50, 164] })
      .layout()
    expect(raisePit(layout, 'sump-1', 0)).toBe(layout)
    expect(raisePit(layout, 'no-such-part', 100)).toBe(layout)
    expect(raisePit(layout, 'sump-1', inches(1)).parts[0]).toMatchObject({ bottomMm: inches(-36) })
  })
})

test('a pit is sized by one press, with an intake of its own kept over the bottom as far as it was', () => {
  const layout = bay('30 x 96 ft')
    .pit('Pit', { x: [100, 136], y: [50, 164] }, { bottom: -30, intake: -27 })
    .layout()
  const asks = { inletMm: inches(-12), designL: gallons(150.6), pumpLph: 0, dayL: 0, submergenceMm: 0 }
  // Running -22.5 as in the level table; pump off 4 in under it, the intake 6 in under that and 3 in over the bottom: -35.5.
  expect(sizePit(layout, 'sump-1', asks).parts[0]).toMatchObject({
    overflowMm: inches(-13),
    runningMm: inches(-22.5),
    pumpOffMm: onTick(inches(-26.5)),
    intakeMm: onTick(inches(-32.5)),
    bottomMm: onTick(inches(-35.5)),
  })
})
