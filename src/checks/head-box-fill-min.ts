import type { Finding } from '../model/finding'
import type { HeadBoxWater } from '../model/water'
import type { Bay, BayRule } from './context'
import { flowTotalOf, found } from './found'

const RULE = 'head-box-fill-min'

/** What the solver leaves open between what comes in and what goes out is far less. */
const CLOSE_SHARE = 1e-3

const findingOf = ({ part, inLph, outLph }: HeadBoxWater, { builtOf }: Bay): Finding[] => {
  const box = builtOf.get(part)?.headBox
  if (!box || outLph <= inLph * (1 + CLOSE_SHARE)) return []
  return [
    found({
      rule: RULE,
      subject: 'flow',
      state: 'Starved',
      parts: [part],
      at: { x: box.at.x, y: box.at.y },
      measured: flowTotalOf(inLph),
      limit: flowTotalOf(outLph),
    }),
  ]
}

/** A pump overfeeds a head box: then its level stands. */
export const headBoxFillMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Water into a head box',
  limit: 'As much runs into a head box as out of it, or more: what is too much falls back to the pit',
  source: 'Geometry of an overflow: a box that gives more than it gets runs dry',
  mending: 'Bring a main from a pump to the box, take a bigger pump, or close valves on the rows.',
  check: (bay) => [...bay.water.boxes.values()].flatMap((box) => findingOf(box, bay)),
  say: ({ parts, measured, limit }, { flowTotal, name }) =>
    `${name(parts[0] ?? '')} gets ${flowTotal(measured.value)} and gives ${flowTotal(limit.value)}: it runs dry.`,
}
