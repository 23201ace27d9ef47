import { expect, test } from 'vitest'
import { rules } from '../../src/checks/index'
import { forceOf, lengthOf, pressureOf, ratioOf, stressOf } from '../../src/checks/found'
import type { Quantity } from '../../src/model/finding'
import type { ScreenId } from '../../src/model/strength'
import { bay } from '../support/bay'
import { foundIn, rowStrength, screen } from '../support/strength'

/** What each screen measures. */
const screens: Readonly<Record<ScreenId, Quantity>> = {
  'rail-stress': stressOf(170),
  'rail-sag': lengthOf(20),
  'rail-joint': lengthOf(400),
  'rail-uplift': forceOf(-13),
  'bar-stress': stressOf(170),
  'bar-sag': lengthOf(20),
  'riser-slenderness': ratioOf(92.4),
  'riser-column': forceOf(5000),
  'riser-push': stressOf(17),
  'hole-net': stressOf(7),
  'hole-edge': lengthOf(40),
  'hole-end': lengthOf(40),
  'hole-bearing': forceOf(7000),
  'ground-bearing': pressureOf(80),
  'house-load': pressureOf(1),
}

const frameRules = rules.filter(({ over }) => over === 'frame').map(({ id }) => id)
const ids = Object.keys(screens) as ScreenId[] // the keys of a record by ScreenId

// Nothing that is not within stays unsaid, and nothing is said twice.
test.each(ids.flatMap((id) => (['both', 'none'] as const).map((bracing) => [id, bracing] as const)))(
  '%s is told of by one rule, braced %s',
  (id, bracing) => {
    const layout = bay('40 x 60 ft').row('A', [165, 100], { bracing }).layout()
    const strength = rowStrength({ screens: [screen(id, 'Too long', screens[id], screens[id])] })
    const told = frameRules.flatMap((rule) => foundIn(rule, layout, strength))
    expect(told.map(({ state }) => state)).toEqual(['Too long'])
  },
)

test('the worst screen of a rule is told, by its state and then by how much of its limit is used', () => {
  const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()
  const [little, much] = [lengthOf(5), lengthOf(10)]
  const told = foundIn(
    'rail-span-max',
    layout,
    rowStrength({
      screens: [
        screen('rail-stress', 'Proof-load', stressOf(130), stressOf(10)),
        screen('rail-sag', 'Too long', little, lengthOf(4)),
        screen('rail-sag', 'Too long', much, lengthOf(4)),
      ],
    }),
  )
  expect(told.map(({ measured }) => measured)).toEqual([much])
})
