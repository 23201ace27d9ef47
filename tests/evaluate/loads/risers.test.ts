import { describe, expect, test } from 'vitest'
import { risersBuilt } from '../../../src/evaluate/loads/risersBuilt'
import { riserScreens } from '../../../src/evaluate/loads/risers'
import { columnScreen, slendernessScreen } from '../../../src/evaluate/loads/risersColumn'
import { pushScreens } from '../../../src/evaluate/loads/risersPush'
import type { Braced, Riser } from '../../../src/evaluate/loads/risersBuilt'
import { woodOf } from '../../../src/evaluate/loads/risersScreen'
import type { Screen } from '../../../src/model/strength'
import { poundsForce, toPoundsForce, toPsi } from '../../../src/units/force'
import { inches, toInches } from '../../../src/units/length'
import { standing } from '../../support/standing'

const HELD: Braced = { isHeld: true, nodeMm: undefined }
const FREE: Braced = { isHeld: false, nodeMm: undefined }

/** A riser of 66 in to its hole, with 86.2 lb on it, held where nothing else is said. */
const riser = (more: Partial<Riser> = {}): Riser => ({
  mark: 'RS-p',
  at: { u: 0, v: -500, z: inches(66) },
  hole: { centreMm: inches(66), diameterMm: inches(1 + 3 / 16) },
  boredMm: inches(1 + 3 / 16),
  lengthMm: inches(70.65),
  alongMm: inches(1.5),
  acrossMm: inches(3.5),
  along: HELD,
  across: HELD,
  carriesN: poundsForce(86.2),
  ...more,
})

const dry = woodOf({ species: 'spf', woodIs: 'dry' }, inches(3.5))
const wet = woodOf({ species: 'spf', woodIs: 'wet' }, inches(3.5))

// NDS 3.7.1 by hand for spruce No. 2, 66 in, braced both ways, wet, C_D 0.9: 976 lb; 86.2 / 976 = 0.09.
test('a braced riser of 66 in bears 976 lb in wet spruce, of which 86.2 lb use 9 %', () => {
  const [screen] = columnScreen(riser(), wet)
  expect(Math.abs(toPoundsForce(screen!.limit.value) - 976)).toBeLessThan(1)
  expect(screen!.used).toBeCloseTo(0.09, 2)
  expect(screen!.state).toBe('Within')
})

// NDS 3.7.1.4: 2.1 x 66 / 1.5 = 92.4, over 50.
test('a riser that nothing braces along the row is refused, and not rated', () => {
  const loose = riser({ along: FREE })
  expect(slendernessScreen(loose)).toMatchObject({ used: Infinity, state: 'Too long' })
  expect(slendernessScreen(loose).measured.value).toBeCloseTo(92.4, 6)
  expect(columnScreen(loose, dry)).toEqual([])
})

// 2.1 x 66 / 3.5 = 39.6 across the row, less than 66 / 1.5 = 44 along it.
test('a riser that is braced along the row alone still buckles along it first', () => {
  const { measured, state } = slendernessScreen(riser({ across: FREE }))
  expect(measured.value).toBeCloseTo(44, 6)
  expect(state).toBe('Within')
})

describe('50 lb at 64 in', () => {
  const pushed = (more: Partial<Riser>, wood = dry): readonly Screen[] =>
    pushScreens(
      riser({ hole: { centreMm: inches(64), diameterMm: inches(1) }, ...more }),
      poundsForce(50),
      wood,
    )

  // By hand: 50 x 64 = 3200 lb-in; / 3.0625 in3 = 1045 psi of 2100; / 1.3125 in3 = 2438 psi of 2310.
  test('bends a riser with 1045 psi the strong way and 2438 psi the weak way, over its 2310', () => {
    const [strong, weak] = pushed({ along: FREE, across: FREE })
    expect(Math.abs(toPsi(strong!.measured.value) - 1045)).toBeLessThan(1)
    expect(Math.abs(toPsi(strong!.limit.value) - 2100)).toBeLessThan(0.1)
    expect(strong!.state).toBe('Within')
    expect(Math.abs(toPsi(weak!.measured.value) - 2438)).toBeLessThan(1)
    expect(Math.abs(toPsi(weak!.limit.value) - 2310)).toBeLessThan(0.1)
    expect(weak!.state).toBe('Too long')
  })

  // 2310 x 0.85 = 1963.5 psi wet; from a brace 34 in up: 50 x 30 / 1.3125 = 1143 psi.
  test('bends a riser with a brace from the brace up', () => {
    const [, weak] = pushed({ along: { isHeld: true, nodeMm: inches(34) } }, wet)
    expect(Math.abs(toPsi(weak!.measured.value) - 1143)).toBeLessThan(1)
    expect(Math.abs(toPsi(weak!.limit.value) - 1963.5)).toBeLessThan(0.1)
  })

  test('is handed on by the rail along the row, but not across it', () => {
    const screens = pushed({})
    expect(screens).toHaveLength(1)
    expect(Math.abs(toPsi(screens[0]!.measured.value) - 1045)).toBeLessThan(1)
  })
})

describe('what braces a riser is read from what is built', () => {
  const bracedWays = (bracing: 'both' | 'along' | 'across' | 'none') => {
    const risers = risersBuilt(standing({ bracing }))
    return {
      along: risers.filter(({ along }) => along.isHeld).length,
      across: risers.filter(({ across }) => across.isHeld).length,
      sideBraced: risers.filter(({ along }) => along.nodeMm !== undefined).length,
      crossBraced: risers.filter(({ across }) => across.nodeMm !== undefined).length,
    }
  }

  // A row of 3 racks has 26 risers; side braces at both ends of both sides, cross braces at 2 end and 2 sleeve pairs.
  test.each([
    ['both', { along: 26, across: 26, sideBraced: 4, crossBraced: 8 }],
    ['along', { along: 26, across: 0, sideBraced: 4, crossBraced: 0 }],
    ['across', { along: 0, across: 26, sideBraced: 0, crossBraced: 8 }],
    ['none', { along: 0, across: 0, sideBraced: 0, crossBraced: 0 }],
  ] as const)('%s', (bracing, expected) => {
    expect(bracedWays(bracing)).toEqual(expected)
  })

  // Side brace of 40 in from node to node: 26 along, 30-3/8 up from the middle of a 2x4 on the runner (3.5 + 1.75 in over the
  // foot plate, on which the riser stands); its node is 35.6 in over the riser's foot.
  test('a side brace holds its riser where its axis crosses the riser', () => {
    const nodes = risersBuilt(standing()).flatMap(({ along }) => along.nodeMm ?? [])
    for (const node of nodes) expect(toInches(node)).toBeCloseTo(3.5 + 1.75 + Math.sqrt(40 ** 2 - 26 ** 2), 2)
  })
})

test('a default row is within every screen of its risers, each said once', () => {
  const screens = riserScreens(standing())
  expect(screens.map(({ id, state }) => `${id} ${state}`)).toEqual([
    'riser-slenderness Within',
    'riser-column Within',
    'riser-push Within',
    'hole-net Within',
    'hole-edge Within',
    'hole-end Within',
    'hole-bearing Within',
  ])
})

test.each(['none', 'across'] as const)('a row braced %s is refused and has no column screen', (bracing) => {
  const screens = riserScreens(standing({ bracing }))
  expect(screens.find(({ id }) => id === 'riser-slenderness')).toMatchObject({ state: 'Too long' })
  expect(screens.find(({ id }) => id === 'riser-push')).toMatchObject({ state: 'Too long' })
  expect(screens.some(({ id }) => id === 'riser-column')).toBe(false)
})

test('a row that hangs from the house has no risers to screen', () => {
  expect(riserScreens(standing({ carriedBy: 'house' }))).toEqual([])
})
