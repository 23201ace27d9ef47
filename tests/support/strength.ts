import type { FrameRule } from '../../src/checks/context'
import { ruleOf } from '../../src/checks/index'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Layout } from '../../src/layout/schema'
import type { Finding, Quantity } from '../../src/model/finding'
import type {
  BarScreen,
  RailLine,
  RailSpan,
  RowStrength,
  Screen,
  ScreenId,
  Stance,
  StanceState,
  Tip,
} from '../../src/model/strength'
import { poundsForce } from '../../src/units/force'
import { inches } from '../../src/units/length'
import { sentenceIn } from './judged'

/** A row's strength made by hand, for rules that read one: all within, and standing. */

const MARKS: Partial<Record<ScreenId, string>> = { 'bar-stress': 'HB', 'bar-sag': 'HB' }

export const screen = (
  id: ScreenId,
  state: Screen['state'],
  measured: Quantity,
  limit: Quantity,
  more: Partial<Screen> = {},
): Screen => ({
  id,
  mark: MARKS[id] ?? (id.startsWith('rail') ? 'RL' : 'RS-p'),
  state,
  used: measured.value / limit.value,
  measured,
  limit,
  under: 'full',
  at: { u: inches(60), v: inches(20), z: inches(71) },
  terms: [],
  ...more,
})

/** A span of a rail from and to so many inches along the row. */
export const span = (from: number, to: number, stock = 'conduit-3/4'): RailSpan => ({
  fromU: inches(from),
  toU: inches(to),
  isOverhang: false,
  stock,
  momentNmm: 0,
  stressMpa: 0,
  sagMm: 0,
  state: 'Within',
  used: 0.5,
  under: 'full',
})

/** A rail 20 in to the right of the centreline, 71 in over the datum. */
export const railOf = (spans: readonly RailSpan[], zInch = 71): RailLine => ({
  v: inches(20),
  z: inches(zInch),
  sticks: [],
  hingesU: [],
  hangers: [],
  spans,
  reactions: [],
  curve: { u: [], sagMm: [], momentNmm: [] },
})

export const barOf = (more: Partial<BarScreen> = {}): BarScreen => ({
  u: 0,
  stock: 'conduit-1/2',
  railV: [inches(-27), inches(27)],
  loads: [],
  fromV: inches(-28.5),
  toV: inches(28.5),
  momentNmm: 0,
  stressMpa: 0,
  sagMm: 0,
  under: 'full',
  bestSpacingMm: undefined,
  ...more,
})

/** How a row of a state of load tips: pounds at its rails, against 50 lb. */
export const tip = (under: Tip['under'], pounds: number, state: StanceState): Tip => ({
  under,
  way: 'across',
  weightN: poundsForce(24.4),
  armMm: inches(15),
  tipsAtN: poundsForce(pounds),
  safety: pounds / 50,
  state,
})

export const stance = (more: Partial<Stance> = {}): Stance => ({
  baseHalfMm: inches(23.25),
  railMm: inches(64),
  riserMm: inches(72),
  oneSideMm: inches(18),
  oneSideLimitMm: inches(18.6),
  heightToBase: 1.55,
  tips: [],
  heldBy: undefined,
  state: 'Stands',
  ...more,
})

export const rowStrength = (more: Partial<RowStrength> = {}): RowStrength => ({
  part: 'rack-row-1',
  loads: { towerN: 111.2, isWeighed: false, towers: 96, ownN: 0, barN: 0, fullN: 0, byMark: new Map() },
  screens: [],
  rails: [railOf([span(0, 30), span(30, 60), span(60, 90)])],
  bar: barOf(),
  stance: stance(),
  state: 'Within',
  at: { x: 0, y: 0, z: 0 },
  ...more,
})

/** A rule over a row's strength. @throws RangeError for another rule. */
const frameRule = (id: string): FrameRule => {
  const rule = ruleOf(id)
  if (rule.over !== 'frame') throw new RangeError(`${id} does not look at a row's strength.`)
  return rule
}

/** What a rule finds of the first row of a bay, were its strength this. */
export const foundIn = (id: string, layout: Layout, strength: RowStrength): readonly Finding[] => {
  const { bay } = evaluate(layout)
  const built = bay.built.find(({ rack }) => rack !== undefined)
  if (!built) throw new RangeError('There is no row in this bay.')
  return frameRule(id).check({ ...strength, part: built.part }, built, bay.settings)
}

/** The same in words, in feet and inches. */
export const saidIn = (id: string, layout: Layout, strength: RowStrength): string[] =>
  foundIn(id, layout, strength).map((finding) => `${finding.state}: ${sentenceIn(layout, finding)}`)
