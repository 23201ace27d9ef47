import type { Evaluation } from '../evaluate/evaluation'
import { boxOf, grown, middle, overlaps } from '../geometry/box'
import type { Point } from '../geometry/point'
import { gapBetween, isInside, type Polygon } from '../geometry/polygon'
import { crossings } from '../geometry/polyline'
import type { Service } from '../layout/house'
import type { Body, Built } from '../model/built'
import { digCautions, FALL_DEPTH_MM, LADDER_DEPTH_MM, SHORING_DEPTH_MM } from '../model/digCautions'
import type { PartId } from '../model/ids'
import type { DrainRun } from '../model/levels'
import { inches } from '../units/length'
import { forReader, placesOf, type Hazard, type Walk } from './hazard'

const SHEETS = ['floor', 'setting-out', 'pegs', 'levels', 'safety']

/** A trench or pit, at its deepest. */
interface Dig {
  readonly part: PartId
  readonly role: 'trench' | 'pit'
  /** Under the floor, bed or lining included, mm. */
  readonly depthMm: number
  readonly at: Point
  /** By which peg that is; undefined for a pit. */
  readonly peg: number | undefined
  readonly outline: Polygon
}

const isDug = ({ role, fromMm }: Body): boolean => (role === 'trench' || role === 'pit') && fromMm < 0

const deepestPeg = ({ pegs }: DrainRun) =>
  pegs.reduce<DrainRun['pegs'][number] | undefined>(
    (deep, peg) => (deep && deep.digMm >= peg.digMm ? deep : peg),
    undefined,
  )

const digOf = ({ part }: Built, { role, outline, fromMm }: Body, run: DrainRun | undefined): Dig => {
  const peg = role === 'trench' && run ? deepestPeg(run) : undefined
  return {
    part,
    role: role === 'pit' ? 'pit' : 'trench',
    depthMm: -fromMm,
    at: peg?.at ?? middle(boxOf(outline)),
    peg: peg?.number,
    outline,
  }
}

/** Every leg of every trench, and every pit, the deepest first. */
const legsOf = ({ bay }: Evaluation): readonly Dig[] =>
  bay.built
    .flatMap((built) =>
      built.bodies.filter(isDug).map((body) => digOf(built, body, bay.levels.drains.get(built.part))),
    )
    .sort((a, b) => b.depthMm - a.depthMm)

/** One for each part, at its deepest. */
const onePerPart = (digs: readonly Dig[]): readonly Dig[] =>
  [...new Map(digs.toReversed().map((dig) => [dig.part, dig])).values()].reverse()

const nameOf = ({ part, role }: Dig, { write }: Walk): string =>
  role === 'pit' ? write.name(part) : `trench of ${write.name(part)}`

const depthWords = ({ depthMm, peg }: Dig, { write }: Walk): string =>
  peg === undefined
    ? `${write.onTape(depthMm)} deep`
    : `${write.onTape(depthMm)} deep at the most, by peg ${peg}`

/** From which depth on each of the sentences of a dig holds, as they come. */
const FROM_MM = [0, LADDER_DEPTH_MM, SHORING_DEPTH_MM]
const KEYS = ['digging', 'trench-ladder', 'trench-sides']
/** OSHA, subpart P. Which paragraph says what stands beside each sentence of a dig. */
const SUBPART_P = '29 CFR 1926.651 and 1926.652'

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

const digHazards = (walk: Walk, digs: readonly Dig[]): Hazard[] =>
  digCautions(digs[0]?.depthMm ?? 0, walk.units).map((sentence, index) => {
    const [title = '', ...rest] = sentence.split(': ')
    const those = digs.filter(({ depthMm }) => depthMm >= (FROM_MM[index] ?? 0))
    return {
      key: KEYS[index] ?? `digging-${index}`,
      title,
      words: capital(rest.join(': ')),
      places: placesOf(those.map((dig) => ({ name: nameOf(dig, walk), says: depthWords(dig, walk) }))),
      sheets: SHEETS,
      stand: 'trench',
      source: SUBPART_P,
      spots: those.map((dig) => ({ name: nameOf(dig, walk), at: dig.at })),
    }
  })

const isCrossed = ({ outline }: Dig, { points }: Service): boolean => {
  const [first] = outline
  if (!first) return false
  return crossings([...outline, first], points).length > 0 || points.some((p) => isInside(outline, p))
}

const serviceWords = (service: Service, digs: readonly Dig[], walk: Walk): string => {
  const crossing = onePerPart(digs.filter((dig) => isCrossed(dig, service)))
  const met = crossing.map((dig) => `${nameOf(dig, walk)} (${walk.write.onTape(dig.depthMm)} deep)`)
  const depth = `drawn ${walk.write.onTape(service.depthMm)} down`
  return met.length === 0 ? `${depth}, met by no dig` : `${depth}, met by ${met.join(' and ')}`
}

/** Who marks lines asks for hand tools within 18 to 30 in of a mark, by state: common practice, no source. */
const servicesHazard = (walk: Walk, digs: readonly Dig[]): Hazard[] => {
  const { services } = walk.plan.bay.house
  if (digs.length === 0) return []
  const within = forReader(walk.units, '24 in', '600 mm')
  const unknown =
    services.length === 0 ? 'None is drawn on this plan, which is no proof that there is none. ' : ''
  return [
    {
      key: 'services',
      title: 'Buried lines',
      words: `${unknown}Marked before the first spade; within ${within} of a mark only by hand. A depth on paper is not proof.`,
      places: placesOf(
        services.map((service) => ({ name: service.name, says: serviceWords(service, digs, walk) })),
      ),
      sheets: ['setting-out', 'pegs', 'levels', 'safety'],
      stand: 'trench',
      source: SUBPART_P,
      spots: services.flatMap(({ name, points }) => points.slice(0, 1).map((at) => ({ name, at }))),
    },
  ]
}

/** Nearer than the dig is deep and so much more, a post is worth a look whatever the soil. */
const WORKING_ROOM_MM = inches(24)

/** The nearest are told: who keeps off those keeps off the others. */
const MOST_FOOTINGS = 3

/** Footings that a dig goes near. */
const footingHazard = (walk: Walk, digs: readonly Dig[]): Hazard[] => {
  const footings = walk.plan.bay.built.flatMap(({ bodies }) =>
    bodies.filter(({ role }) => role === 'footing'),
  )
  const near = digs
    .filter(({ depthMm }) => depthMm >= FALL_DEPTH_MM)
    .flatMap((dig) => {
      const reach = grown(boxOf(dig.outline), dig.depthMm + WORKING_ROOM_MM)
      return footings
        .filter(({ outline }) => overlaps(reach, boxOf(outline)))
        .map((footing) => ({
          dig,
          footing,
          gapMm: Math.max(0, gapBetween(dig.outline, footing.outline).gapMm),
        }))
    })
    .sort((a, b) => a.gapMm - b.gapMm)
  if (near.length === 0) return []
  return [
    {
      key: 'footings',
      title: 'Posts beside a dig',
      words: 'No dig goes inside the line that falls 1 in 1 from the bottom edge of a footing.',
      places: placesOf(
        near.slice(0, MOST_FOOTINGS).map(({ dig, footing, gapMm }) => ({
          name: walk.write.name(footing.part),
          says: `footing ${walk.write.onTape(-footing.fromMm)} down, ${walk.write.onTape(gapMm)} from ${nameOf(dig, walk)}`,
        })),
      ),
      sheets: ['setting-out', 'pegs', 'levels', 'safety'],
      stand: 'trench',
      source: SUBPART_P,
      spots: near.slice(0, 1).map(({ footing }) => ({
        name: `footing of ${walk.write.name(footing.part)}`,
        at: middle(boxOf(footing.outline)),
      })),
    },
  ]
}

/** What can hurt whoever digs: the dig by its depth, what is buried, and what stands beside it. */
export const digHazardsOf = (walk: Walk): readonly Hazard[] => {
  const legs = legsOf(walk.plan)
  const digs = onePerPart(legs)
  return [...digHazards(walk, digs), ...servicesHazard(walk, legs), ...footingHazard(walk, digs)]
}
