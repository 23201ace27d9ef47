import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { datumAt } from '../../src/model/levels'
import { toInches } from '../../src/units/length'
import { bay, type Sketch } from '../support/bay'
import { inchesOf } from '../support/site'

// Rails on grade: the floor falls 0.18 in a foot (1.5 %), which is 5.4 in over the 360 in of three racks.
// Arithmetic by hand; feet stand from 2-1/8 in inside either end of the row.

const sloping = (): Sketch => bay('40 x 60 ft').level([0, 0], 0).level([0, 360], -5.4)

const levelsOf = (sketch: Sketch) => evaluate(sketch.settings({ datum: 'grade' }).layout()).bay

const shimsOf = (sketch: Sketch): number[] =>
  [...levelsOf(sketch).levels.feet.values()].flat().map(({ shimMm }) => toInches(shimMm))

test('a row on a plane that falls along it stands without shims', () => {
  for (const shim of shimsOf(sloping().row('A', [165, 100]))) expect(shim).toBeCloseTo(0, 6)
})

test('its datum falls with the floor from start to end', () => {
  const { levels, built } = levelsOf(sloping().row('A', [165, 100]))
  const { leftFace } = built.find(({ rack }) => rack)!.rack!
  const [part] = levels.grades.keys()
  const [from, to] = [leftFace.from, leftFace.to].map((p) => toInches(datumAt(levels, part!, p)))
  expect(from).toBeCloseTo(-1.5, 4)
  expect(to! - from!).toBeCloseTo(-5.4, 4)
})

test('a row turned round climbs instead, on the same datum', () => {
  const { levels } = levelsOf(sloping().row('A', [165, 460], { heading: 270 }))
  const [part] = levels.grades.keys()
  const at = (y: number) => toInches(datumAt(levels, part!, { x: inchesOf(1), y: y * 25.4 }))
  expect(at(100)).toBeCloseTo(-1.5, 4)
  expect(at(460)).toBeCloseTo(-6.9, 4)
})

test('across the row rails stay level: the lower riser is shimmed by the whole fall across', () => {
  // 0.01 in an inch across; risers 40 in apart.
  const across = bay('40 x 60 ft').level([0, 0], 0).level([100, 0], -1).level([0, 100], 0)
  const shims = shimsOf(across.row('A', [165, 100]))
  expect(Math.min(...shims)).toBeCloseTo(0, 6)
  expect(Math.max(...shims)).toBeCloseTo(0.4, 6)
})

test('a hump in the floor holds the row up: no foot is ever dug in', () => {
  const hump = bay('40 x 60 ft').level([0, 100], 0).level([0, 280], 1).level([0, 460], 0)
  for (const shim of shimsOf(hump.row('A', [165, 100]))) expect(shim).toBeGreaterThan(-1e-6)
})
