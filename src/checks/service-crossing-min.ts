import { drainStation } from '../geometry/drainProfile'
import { crossings, nearestOn } from '../geometry/polyline'
import type { Point } from '../geometry/point'
import type { Service } from '../layout/house'
import type { Body } from '../model/built'
import type { Finding } from '../model/finding'
import { inches } from '../units/length'
import type { Bay, BayRule } from './context'
import { CLOSE_MM, found, leastOfEach, lengthOf, stateFor, term } from './found'

const RULE = 'service-crossing-min'

/** Clear earth between a dig and a buried line. Common practice, no source; the owner of the line has the last word. */
const CLEAR_MM = inches(12)

const serviceNames: Readonly<Record<Service['what'], string>> = {
  wire: 'buried wire',
  gas: 'gas line',
  water: 'water pipe',
  drain: 'old drain',
  other: 'buried line',
}

interface Crossing {
  readonly at: Point
  /** How deep is dug there, mm. */
  readonly digMm: number
}

/** A trench is as deep as its pipe lies at that place; anything else is dug to one bottom. */
const digAt = ({ part, role, fromMm }: Body, at: Point, { levels, builtOf, site }: Bay): number => {
  const run = role === 'trench' ? levels.drains.get(part) : undefined
  const tube = run && builtOf.get(part)?.tubes.find((each) => each.role === 'drain')
  if (!run || !tube) return -fromMm
  const { alongMm } = nearestOn(tube.path, at)
  const groundMm = site.groundAt(at.x, at.y)
  return drainStation({ at, alongMm, groundMm }, run.high.invertMm, run).digMm
}

/** Where the edge of a dig meets a buried line, at the deepest of such places. */
const deepestCrossing = (body: Body, service: Service, bay: Bay): Crossing | undefined => {
  const [first] = body.outline
  const places = first ? crossings([...body.outline, first], service.points) : []
  return places.map(({ at }) => ({ at, digMm: digAt(body, at, bay) })).sort((a, b) => b.digMm - a.digMm)[0]
}

const findingsOf = (body: Body, service: Service, index: number, bay: Bay): Finding[] => {
  const crossing = deepestCrossing(body, service, bay)
  if (!crossing) return []
  const { at, digMm } = crossing
  // Earth between the dig and the top of the line; a dig that goes past the line leaves none.
  const clearMm = service.depthMm - digMm
  if (clearMm >= CLEAR_MM - CLOSE_MM) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: stateFor('fit', clearMm, CLEAR_MM, 0),
      parts: [body.part],
      detail: `service-${index}`,
      at,
      measured: lengthOf(clearMm),
      limit: lengthOf(CLEAR_MM),
      facts: { service: service.name, what: serviceNames[service.what], depthMm: service.depthMm },
      terms: [term('Depth dug there', lengthOf(digMm)), term('Depth of the line', lengthOf(service.depthMm))],
    }),
  ]
}

const isDug = ({ role }: Body) => role === 'trench' || role === 'pit'

const check = (bay: Bay): Finding[] => {
  const { built, house } = bay
  if (house.services.length === 0) return []
  const dug = built.flatMap((b) => b.bodies.filter(isDug))
  return house.services.flatMap((service, index) =>
    leastOfEach(dug.flatMap((body) => findingsOf(body, service, index, bay))),
  )
}

/** A trench or pit over a buried line: called and marked before a spade goes in. */
export const serviceCrossingMin: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Dig over a buried line',
  limit: '12 in of earth between a dig and any buried line',
  source:
    'Common practice, no source. Call before you dig; hand-dig near marks; moving a line is licensed work',
  mending: 'Move the dig, or have the line located and moved by those licensed to.',
  check,
  say: ({ parts, measured, limit, facts }, { onTape, name }) => {
    const line = `the ${facts['what']} “${facts['service']}”, ${onTape(Number(facts['depthMm']))} deep`
    return measured.value > 0
      ? `${name(parts[0] ?? '')} is dug to ${onTape(measured.value)} over ${line}; it wants ${onTape(limit.value)}. Call before you dig.`
      : `${name(parts[0] ?? '')} is dug through ${line}. Call before you dig, and have it located and moved first.`
  },
}
