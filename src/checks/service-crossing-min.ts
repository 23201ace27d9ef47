import { crossings } from '../geometry/polyline'
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

const placeOfCrossing = (outline: readonly Point[], service: Service): Point | undefined => {
  const [first] = outline
  return first && crossings([...outline, first], service.points)[0]?.at
}

const findingsOf = (body: Body, service: Service, index: number): Finding[] => {
  const at = placeOfCrossing(body.outline, service)
  if (!at) return []
  const digMm = -body.fromMm
  // Earth between the deepest of the dig and the top of the line; a dig that goes past the line leaves none.
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
      terms: [term('Depth dug', lengthOf(digMm)), term('Depth of the line', lengthOf(service.depthMm))],
    }),
  ]
}

const isDug = ({ role }: Body) => role === 'trench' || role === 'pit'

const check = ({ built, house }: Bay): Finding[] => {
  if (house.services.length === 0) return []
  const dug = built.flatMap((b) => b.bodies.filter(isDug))
  return house.services.flatMap((service, index) =>
    leastOfEach(dug.flatMap((body) => findingsOf(body, service, index))),
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
