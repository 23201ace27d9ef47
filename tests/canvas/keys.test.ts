import { describe, expect, test } from 'vitest'
import { perform } from '../../src/canvas/deeds'
import { deedOf, keyHelp, nudgeMm, type KeyPress } from '../../src/canvas/keys'
import { createPlanner } from '../../src/store/planner'
import { bay } from '../support/bay'
import { inchesOf } from '../support/site'

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  shift: false,
  ctrl: false,
  alt: false,
  ...held,
})

/** Two rows of one rack, and a post south of the second. */
const planner = () =>
  createPlanner(
    bay('40 x 60 ft')
      .row('N1', [100, 300], { racks: 1 })
      .row('N2', [220, 300], { racks: 1 })
      .post('Post', [220, 260])
      .layout(),
  )

const doing = (on: ReturnType<typeof planner>, key: string, held?: Partial<KeyPress>) => {
  const { units } = on.store.getState()
  const deed = deedOf(press(key, held), units)
  return deed && perform(on, deed)
}

const at = (on: ReturnType<typeof planner>, index: number) => {
  const part = on.store.getState().layout.parts[index]!
  return 'at' in part ? [inchesOf(part.at.x), inchesOf(part.at.y)] : []
}

describe('arrow keys', () => {
  test('move by an inch or by a sixteenth, and by 10 or 1 mm of the metric tape', () => {
    expect([nudgeMm('feet-inches', false), nudgeMm('feet-inches', true)].map(inchesOf)).toEqual([1, 0.063])
    expect([nudgeMm('metric', false), nudgeMm('metric', true)]).toEqual([10, 1])
  })

  test('move what is selected, each press an entry of the history, and say what it did to the aisle', () => {
    const on = planner()
    on.select(['rack-row-2'])
    const said = doing(on, 'ArrowUp')
    expect(at(on, 1)).toEqual([220, 301])
    expect(said).toMatch(/^N2 moved 1" north; aisle to .+, (Fits|Tight|Clash)$/)
    doing(on, 'ArrowLeft', { shift: true })
    expect(at(on, 1)).toEqual([219.938, 301])
    expect(on.store.getState().history.done).toHaveLength(2)
  })

  test('with nothing selected do nothing, with Ctrl move the paper', () => {
    const on = planner()
    const { layout, view } = on.store.getState()
    expect(doing(on, 'ArrowUp')).toBeUndefined()
    expect(on.store.getState().layout).toBe(layout)
    doing(on, 'ArrowRight', { ctrl: true })
    expect(on.store.getState().view.x).toBeGreaterThan(view.x)
    doing(on, 'ArrowUp', { ctrl: true })
    expect(on.store.getState().view.y).toBeGreaterThan(view.y)
  })

  test('of a locked part change nothing and say so', () => {
    const on = planner()
    on.select(['rack-row-2'])
    doing(on, 'l')
    const { layout } = on.store.getState()
    for (const key of ['ArrowUp', 'r', 'm', 'Delete']) {
      on.set({ notice: undefined })
      expect(doing(on, key)).toBe('')
      expect(on.store.getState().notice?.text).toMatch(/^Locked in place: N2/)
    }
    expect(on.store.getState().layout).toBe(layout)
    expect(doing(on, 'l')).toBe('N2 unlocked')
    doing(on, 'ArrowUp')
    expect(at(on, 1)).toEqual([220, 301])
  })
})

describe('letters', () => {
  test.each([
    ['r', 'Turn N1'],
    ['M', 'Mirror N1'],
    ['d', 'Copy N1'],
    ['Delete', 'Delete N1'],
  ])('%s is one entry: %s', (key, label) => {
    const on = planner()
    on.select(['rack-row-1'])
    doing(on, key, { shift: key === 'M' })
    expect(on.store.getState().history.done.map((entry) => entry.label)).toEqual([label])
  })

  test('m on a part that is its own mirror image is no entry', () => {
    // A row that runs north has its riser pipe on the other side in the mirror; a pit has nothing on a side.
    const on = createPlanner(
      bay('40 x 60 ft')
        .pit('Pit', { x: [100, 136], y: [100, 214] })
        .layout(),
    )
    on.select(['sump-1'])
    expect(doing(on, 'm')).toBe('Pit stays as it was')
    expect(on.store.getState().history.done).toEqual([])
  })

  test('a copy is selected', () => {
    const on = planner()
    on.select(['obstacle-1'])
    expect(doing(on, 'd')).toBe('Post copied')
    expect(on.store.getState().selection).toEqual(['obstacle-2'])
  })

  test('point and comma go through the parts, round and round', () => {
    const on = planner()
    const visit = (key: string) => {
      doing(on, key)
      return on.store.getState().selection
    }
    expect(['.', '.', '.', '.'].map(visit)).toEqual([
      ['rack-row-1'],
      ['rack-row-2'],
      ['obstacle-1'],
      ['rack-row-1'],
    ])
    expect(visit(',')).toEqual(['obstacle-1'])
  })

  test('plus and minus zoom about the middle, and zero shows the whole house', () => {
    const on = planner()
    const { view } = on.store.getState()
    doing(on, '+')
    expect(on.store.getState().view.pxPerMm).toBeCloseTo(view.pxPerMm * 1.25, 12)
    doing(on, '0')
    expect(on.store.getState().view).toEqual(view)
  })

  test('capitals by caps lock are the same keys', () => {
    expect(deedOf(press('R'), 'metric')).toEqual(deedOf(press('r'), 'metric'))
  })

  test.each(['z', 's', 'o', 'r', 'Tab', 'F5'])('Ctrl %s is left to the page', (key) => {
    expect(deedOf(press(key, { ctrl: true }), 'metric')).toBeUndefined()
  })

  test('every line of the help says what is done', () => {
    expect(keyHelp.length).toBeGreaterThan(8)
    for (const { keys, does } of keyHelp) {
      expect(keys).not.toBe('')
      expect(does).toMatch(/^[a-z]/)
    }
  })
})

test('Escape gives up a drag whatever keys are held for it', () => {
  for (const held of [{}, { ctrl: true }, { alt: true }, { shift: true }])
    expect(deedOf(press('Escape', held), 'feet-inches')).toEqual({ does: 'cancel' })
})
