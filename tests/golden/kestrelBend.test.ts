import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { withProof } from '../../src/evaluate/withProof'
import { boxOf } from '../../src/geometry/box'
import type { Finding } from '../../src/model/finding'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import { prove } from '../../src/solvers/cutting/prove/prove'
import { toGpm } from '../../src/units/flow'
import { toHeadFeet } from '../../src/units/head'
import { toInches } from '../../src/units/length'
import { firstTry } from '../support/firstTry'
import { aisleBetween, findingsOf, judged, mended, nameIn, sentenceIn, told } from '../support/judged'
import { PEGS_N, type Peg } from '../support/pegs'
import { kestrelBend } from '../support/scenarios/kestrelBend'
import { inchesOf } from '../support/site'

/*
 * "Kestrel Bend Farm, House 2", an invented farm. Every number here is from the worked example of the trade notes, hand
 * arithmetic, unless said otherwise.
 */
const layout = kestrelBend().layout()
const evaluation = evaluate(layout)

const width = (from: string, to: string, bay = layout): number => inchesOf(aisleBetween(bay, from, to).widthMm)

describe('the floor', () => {
  test('480 towers, 4,320 plant sites', () => {
    expect([evaluation.towers, evaluation.sites]).toEqual([480, 4320])
  })

  test('aisles of 36 in between three rows, 30 in at the west wall and 52 in at the east', () => {
    expect(['N', 'S'].map((block) => width(`${block}1`, `${block}2`))).toEqual([36, 36])
    expect(['N', 'S'].map((block) => width(`${block}2`, `${block}3`))).toEqual([36, 36])
    expect([width('N1', 'wall'), width('S1', 'wall')]).toEqual([30, 30])
    expect([width('N3', 'wall'), width('S3', 'wall')]).toEqual([52, 52])
  })

  test('a middle aisle of 74 in from rack to rack is 62 in from leaf to leaf', () => {
    // 410 - 336 = 74, less 6 in of leaf on both sides.
    expect(width('N1', 'S1')).toBe(62)
  })

  test('the heater stands 39 in from the leaves, and wants 36', () => {
    // 815 - (410 + 360 + 6).
    const edge = (name: string, role: string) => {
      const { id } = layout.parts.find((part) => part.name === name)!
      return boxOf(evaluation.bay.builtOf.get(id)!.bodies.find((body) => body.role === role)!.outline)
    }
    expect(inchesOf(edge('Heater', 'equipment').y0 - edge('N2', 'canopy').y1)).toBe(39)
    expect(judged('keep-clear-free', layout)).toEqual([])
  })

  test('all that must be mended is the buried wire under the pit, which an electrician moves', () => {
    const must = evaluation.findings.filter(({ state }) => state === 'Clash' || state === 'Backs up')
    expect(must.map((finding) => sentenceIn(layout, finding))).toEqual([
      'Pit is dug through the buried wire “Old lighting feed, 120 V”, 18" deep. Call before you dig, and have it located and moved first.',
    ])
  })
})

describe('the water, as first fed', () => {
  const { water } = evaluation.bay
  const said = (rule: string) =>
    findingsOf(rule, layout).map(({ state, parts }) => `${nameIn(layout, parts[0]!)} ${state}`)
  const shareOf = (name: string) => water.rows.get(layout.parts.find((part) => part.name === name)!.id)!.figures.spread

  test('480 towers at 4 gph are 32 gpm in six zones: 6.4 to each north row, 4.27 to each south one', () => {
    const zones = [...water.zones.values()].map(({ flowLph }) => toGpm(flowLph))
    expect(toGpm(water.totalLph)).toBeCloseTo(32, 1)
    expect(zones).toEqual([6.4, 4.27, 6.4, 4.27, 6.4, 4.27].map((flow) => expect.closeTo(flow, 1)))
  })

  test('the pump gives 37 gpm at some 16.5 ft, bypass and all, and lifts it 7.9 ft', () => {
    // 32 gpm and 15 % of bypass; from the running level to the tube ends, 94-1/2 in to the laterals over them.
    const [pump] = [...water.pumps.values()]
    expect(Math.abs(toGpm(pump!.flowLph) - 37)).toBeLessThan(1)
    expect(Math.abs(toHeadFeet(pump!.headMm) - 16.5)).toBeLessThan(0.5)
    expect(Math.abs(toHeadFeet(pump!.staticMm) - 7.9)).toBeLessThan(0.3)
  })

  test('24 stations on a straight lateral starve, 16 drift; one split is told to mend each', () => {
    // 31.6 % and 13.5 % by hand for one lateral under Churchill's factor. Here two laterals share a header that loses some
    // head between them, which puts 1.5 to 2.5 points on top: see tests/solvers/water for the lateral by itself.
    expect(Math.abs(100 * shareOf('N1') - 31.6)).toBeLessThan(3)
    expect(Math.abs(100 * shareOf('S1') - 13.5)).toBeLessThan(2.5)
    expect(said('tower-flow-even').sort()).toEqual([
      'N1 Starved',
      'N2 Starved',
      'N3 Starved',
      'S1 Drifting',
      'S2 Drifting',
      'S3 Drifting',
    ])
    for (const { mend } of findingsOf('tower-flow-even', layout))
      expect(mend).toMatchObject({ kind: 'split', feed: 'centre-split' })
  })

  test('and that is all that is said of the water: the zones are balanced', () => {
    const rules = evaluation.findings.filter(({ subject }) => subject === 'flow').map(({ rule }) => rule)
    expect([...new Set(rules)]).toEqual(['tower-flow-even'])
  })
})

describe('the first try, with the north block 14 in further south', () => {
  test('the post leaves 22 in leaf to post on either side', () => {
    expect([width('N2', 'Post', firstTry()), width('S2', 'Post', firstTry())]).toEqual([22, 22])
    expect(judged('aisle-width-min', firstTry())).toEqual(['Tight, 22 of 36', 'Tight, 22 of 36'])
  })

  test('one press moves the north block 14 in north', () => {
    expect(told('aisle-width-min', firstTry())[0]).toBe(
      'N2 to Post is 22" leaf to leaf; the way past it wants 36". Move N1, N2 and N3 14" north.',
    )
    const [finding] = findingsOf('aisle-width-min', firstTry())
    expect(finding?.mend).toMatchObject({ kind: 'move', dxMm: 0, dyMm: expect.closeTo(14 * 25.4, 6) })
  })

  test('and then the way past the post is 36 in, and nothing else of the first try is left', () => {
    // The post's other side is passed no more: 22 in of room to hang leaves in is more than they need.
    const after = mended('aisle-width-min', firstTry(), 0)
    expect(width('N2', 'Post', after)).toBe(36)
    // A shifted block has shorter pipes: what is said of its water has other numbers.
    const dry = (findings: readonly Finding[]) => findings.filter(({ subject }) => subject !== 'flow')
    const left = dry(evaluate(after).findings)
    expect(left).toEqual(dry(evaluation.findings))
    expect(left.filter(({ rule }) => rule !== 'service-crossing-min' && rule !== 'foot-shim-max')).toEqual([])
  })
})

describe('the feet', () => {
  const { levels } = evaluation.bay
  const feet = [...levels.feet.values()].flat()

  test('132 feet; the highest at the north-west, -0.33 in; the lowest at the south-east, -2.59 in', () => {
    expect(feet).toHaveLength(132)
    const grounds = feet.map(({ groundMm }) => toInches(groundMm))
    expect(Math.max(...grounds)).toBeCloseTo(-0.33, 2)
    expect(Math.min(...grounds)).toBeCloseTo(-2.59, 2)
    expect(toInches([...levels.datums.values()][0]!)).toBeCloseTo(-0.33, 2)
    const lowest = feet.find(({ groundMm }) => toInches(groundMm) === Math.min(...grounds))!
    expect([levels.highest!, lowest].map(({ at }) => [at.x < 352 * 12.7, at.y > 856 * 12.7])).toEqual([
      [true, true],
      [false, false],
    ])
  })

  test('shims from 0 to 2-1/4 in', () => {
    const sixteenths = feet.map(({ shimMm }) => Math.round(toInches(shimMm) * 16))
    expect([Math.min(...sixteenths), Math.max(...sixteenths)]).toEqual([0, 36])
  })

  test('gutters of the south block fall against the floor: 0.56 in of shim over 20 ft', () => {
    // 2 in of fall south over 856 in, 240 in of it, from the first rack line to the last.
    const shims = levels.feet.get(layout.parts.find(({ name }) => name === 'S2')!.id)!
    const along = shims.filter(({ at }) => Math.abs(at.x - shims[0]!.at.x) < 1)
    const byPlace = along.toSorted((a, b) => a.at.y - b.at.y)
    const [south, north] = [byPlace[0]!, byPlace.at(-1)!]
    const perInch = (south.shimMm - north.shimMm) / (north.at.y - south.at.y)
    expect(perInch * 240).toBeCloseTo(0.56, 2)
  })
})

/**
 * The S line lies 104 in further south, where the floor, and so the pipe under its cover, is 104 x 2/856 = 0.243 in lower:
 * the notes give its ends alone, -8.47 and -11.32, and the rest follows. What is dug stays the same.
 */
const PEGS_S = PEGS_N.map(([station, invert, ground, dig]): Peg => [station, invert - 0.243, ground - 0.243, dig])

describe.each([
  ['Drain N', -8.23, -11.08, PEGS_N],
  ['Drain S', -8.47, -11.32, PEGS_S],
] as const)('%s', (name, start, inlet, pegs) => {
  const run = evaluation.bay.levels.drains.get(layout.parts.find((part) => part.name === name)!.id)!

  // The notes write levels to 0.01 in, and cut off some that end in 5.
  const WRITTEN = 0.011

  test('starts and comes into the pit at its levels, falling 2.85 in over 274 in', () => {
    expect(Math.abs(toInches(run.high.invertMm) - start)).toBeLessThan(WRITTEN)
    expect(Math.abs(toInches(run.low.invertMm) - inlet)).toBeLessThan(WRITTEN)
    expect(inchesOf(run.lengthMm)).toBe(274)
    expect(toInches(run.high.invertMm - run.low.invertMm)).toBeCloseTo(2.85, 2)
  })

  test('keeps 3 in of cover, no more where it is tightest', () => {
    expect(inchesOf(run.tightest.coverMm)).toBe(3)
  })

  test.each(pegs.map((peg, index) => ({ peg, index })))(
    'peg at $peg.0 in, to be dug $peg.3 in',
    ({ peg: [station, invert, ground, dig], index }) => {
      const peg = run.outlets[index]!
      expect(run.outlets).toHaveLength(12)
      expect(inchesOf(run.lengthMm - peg.alongMm)).toBe(station)
      expect(Math.abs(toInches(peg.invertMm) - invert)).toBeLessThan(WRITTEN)
      expect(Math.abs(toInches(peg.groundMm) - ground)).toBeLessThan(WRITTEN)
      expect(Math.round(toInches(peg.digMm) * 8) / 8).toBe(dig)
    },
  )
})

describe('what is bought', () => {
  const countOf = (item: string) => evaluation.counts.find((line) => line.item === item)?.count
  const boughtOf = (stock: string) =>
    evaluation.cuts
      .find((list) => list.stock === stock)
      ?.bought.map(({ stockMm, count }) => `${count} x ${inchesOf(stockMm)}`)

  test('1,926 screws', () => {
    expect(countOf('screw')).toBe(1926)
  })

  const lumber = evaluation.cuts.find(({ stock }) => stock === 'lumber-2x4')!

  test('119 twelve-foot and 80 ten-foot boards at once, 2,228 ft, with a first bound of 2,206', () => {
    // The notes buy 128 twelve-foot and 71 ten-foot boards, 2,246 ft, since they hold each member to one stock. Freed of that
    // the same pieces come out of 18 ft less: the derivation, and that of the bound, stand in
    // tests/solvers/cutting/sampleBay.test.ts, with the 128 + 71 beside them.
    expect(boughtOf('lumber-2x4')).toEqual(['119 x 144', '80 x 120'])
    expect(inchesOf(lumber.boughtMm) / 12).toBe(2228)
    // 62 cents a foot, the placeholder of the shipped book: 2,228 ft are $1,381.36 and 2,206 ft $1,367.72.
    expect([lumber.costIs, lumber.cents, lumber.cost, lumber.bound]).toEqual(['cents', 138_136, 138_136, 136_772])
    expect(inchesOf(lumber.netMm) / 12).toBeCloseTo(2158.7, 1)
    expect([lumber.tooLong, lumber.ranOut]).toEqual([[], []])
  })

  test('123 twelve-foot and 75 ten-foot boards once it is proven, 2,226 ft, and no plan costs less', async () => {
    // 20 ft under the notes' 2,246: 123 x 12 + 75 x 10 = 1,476 + 750 = 2,226 ft, at 62 cents $1,380.12.
    const proof = await prove(lumber.problem, firstPlan(lumber.problem))
    const list = withProof(lumber, proof)
    expect(list.standing).toEqual({ kind: 'proven' })
    expect([list.cents, inchesOf(list.boughtMm) / 12]).toEqual([138_012, 2226])
    expect(list.bought.map(({ stockMm, count }) => `${count} x ${inchesOf(stockMm)}`)).toEqual([
      '123 x 144',
      '75 x 120',
    ])
    // Every piece is on a board, and no board is longer than it is: pieces with a kerf of 1/8 in between them.
    expect(list.lines).toEqual(lumber.lines)
    const onBoards = (lengthMm: number) =>
      list.boards
        .flatMap(({ count, pieces }) => pieces.map((piece) => ({ ...piece, count: piece.count * count })))
        .filter((piece) => Math.abs(piece.lengthMm - lengthMm) < 0.01)
        .reduce((sum, { count }) => sum + count, 0)
    expect(list.lines.map(({ lengthMm }) => onBoards(lengthMm))).toEqual(list.lines.map(({ count }) => count))
    for (const { stockMm, pieces } of list.boards) {
      const count = pieces.reduce((sum, piece) => sum + piece.count, 0)
      const taken = pieces.reduce((sum, piece) => sum + inchesOf(piece.lengthMm) * piece.count, 0)
      expect(taken + (count - 1) / 8).toBeLessThanOrEqual(inchesOf(stockMm) + 0.001)
    }
  })

  test('a 10 ft gutter for each rack and line, and no conduit thrown away but the ends of bars', () => {
    // 15 racks x 4 lines. 2 rails a rack, 8 bars a rack two to a stick: 30 + 60.
    expect(boughtOf('gutter-5in')).toEqual(['60 x 120'])
    expect(boughtOf('conduit-3/4')).toEqual(['90 x 120'])
  })

  test('eighteen sleeves from two sticks', () => {
    // 3 rows of 2 x 2 and 3 of 2 x 1; 14 come from a stick.
    expect(boughtOf('conduit-1')).toEqual(['2 x 120'])
  })
})
