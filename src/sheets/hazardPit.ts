import { boxOf, middle } from '../geometry/box'
import { signedArea } from '../geometry/polygon'
import type { Body, Built } from '../model/built'
import { litresAt } from '../model/pitFacts'
import { MM_PER_M } from '../units/length'
import { cubicMetres } from '../units/volume'
import { forReader, placesOf, type Hazard, type Walk } from './hazard'
import { massWords } from './massWords'

interface Pit {
  readonly built: Built
  readonly body: Body
  readonly depthMm: number
}

const pitsOf = ({ plan }: Walk): readonly Pit[] =>
  plan.bay.built.flatMap((built) =>
    built.bodies.filter(({ role }) => role === 'pit').map((body) => ({ built, body, depthMm: -body.fromMm })),
  )

const spotOf = (walk: Walk, { part, outline }: Body) => ({
  name: walk.write.name(part),
  at: middle(boxOf(outline)),
})

const waterWords = ({ built: { pit } }: Pit, { write }: Walk): string =>
  pit ? `, ${write.volume(litresAt(pit, pit.overflowMm))} when full` : ''

const depthSays = (pit: Pit, walk: Walk): string => {
  const gap = pit.depthMm > 0 ? `, no gap in its lid over ${forReader(walk.units, '4 in', '100 mm')}` : ''
  return `${pit.depthMm > 0 ? `${walk.write.onTape(pit.depthMm)} deep` : 'stands on the floor'}${waterWords(pit, walk)}${gap}`
}

/**
 * Lid, kerb, gap: common practice, no source. Air and rescue: 29 CFR 1926.651(g), which treats a hole over 4 ft with bad air;
 * less deep pits have killed as well.
 */
const fallHazard = (walk: Walk, pits: readonly Pit[]): Hazard => {
  const gap = forReader(walk.units, '4 in', '100 mm')
  const isDug = pits.some(({ depthMm }) => depthMm > 0)
  const onFloor = `A lid that bears a person, locked, no gap over ${gap}; children and visitors kept off.`
  const inGround =
    'A lid that bears a person, locked; a kerb; children and visitors kept off. Never go in alone: bad air gathers there.'
  return {
    key: 'pit',
    title: 'Pit',
    words: isDug ? inGround : onFloor,
    places: placesOf(
      pits.map((pit) => ({ name: walk.write.name(pit.body.part), says: depthSays(pit, walk) })),
    ),
    sheets: ['floor', 'levels', 'pipes', 'start-up', 'round', 'safety'],
    stand: 'pit',
    source: '29 CFR 1926.651 and 1926.652',
    spots: pits.map(({ body }) => spotOf(walk, body)),
  }
}

const overflowHazard = (walk: Walk, pits: readonly Pit[]): Hazard => ({
  key: 'overflow',
  title: 'Overflow and make-up',
  words: 'Screened, over an air gap, where the law lets it run; an air gap on the make-up too.',
  places: placesOf(
    pits.flatMap(({ built: { pit }, body }) =>
      pit
        ? [
            {
              name: walk.write.name(body.part),
              says: `${walk.write.onTape(pit.overflowBoreMm)} overflow ${walk.write.onTape(pit.rimMm - pit.overflowMm)} under the rim`,
            },
          ]
        : [],
    ),
  ),
  sheets: ['levels', 'pipes', 'round', 'safety'],
  stand: 'pit',
  source: 'International Plumbing Code 608 on the air gap',
  spots: pits.map(({ body }) => spotOf(walk, body)),
})

/** A litre of water is a kilogram, near enough for whoever builds its stand. */
const boxSays = (built: Built, walk: Walk): string => {
  const { headBox } = built
  const body = built.bodies.find(({ role }) => role === 'equipment')
  if (!headBox || !body) return ''
  const area = Math.abs(signedArea(body.outline)) / MM_PER_M ** 2
  const litres = cubicMetres(area * ((headBox.waterMm - headBox.at.z) / MM_PER_M))
  const floorMm = walk.plan.bay.site.groundAt(headBox.at.x, headBox.at.y)
  return `${massWords(litres, walk.units)} of water, its top ${walk.write.length(headBox.waterMm - floorMm)} over the floor`
}

const headBoxHazard = (walk: Walk): Hazard[] => {
  const boxes = walk.plan.bay.built.filter(({ headBox }) => headBox !== undefined)
  if (boxes.length === 0) return []
  const weighs = forReader(walk.units, '62 lb a cubic foot', '1 kg a litre')
  return [
    {
      key: 'head-box',
      title: 'Head box',
      words: `Full of water at the height of a head, ${weighs}. Its stand is braced and bears it down to the floor; never hang it from the house or a rack.`,
      places: placesOf(
        boxes.map((built) => ({ name: walk.write.name(built.part), says: boxSays(built, walk) })),
      ),
      sheets: ['floor', 'assembly', 'pipes', 'start-up', 'round', 'safety'],
      stand: 'water',
      source: 'Common practice, no source',
      spots: boxes.flatMap(({ part, headBox }) =>
        headBox ? [{ name: walk.write.name(part), at: headBox.at }] : [],
      ),
    },
  ]
}

/** What can hurt whoever stands at a pit, and what its water can do elsewhere. */
export const pitHazardsOf = (walk: Walk): readonly Hazard[] => {
  const pits = pitsOf(walk)
  return [
    ...(pits.length === 0 ? [] : [fallHazard(walk, pits), overflowHazard(walk, pits)]),
    ...headBoxHazard(walk),
  ]
}
