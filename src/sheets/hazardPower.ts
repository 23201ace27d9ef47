import { gapBetween } from '../geometry/polygon'
import type { Layout } from '../layout/schema'
import type { Body, Built } from '../model/built'
import { feet } from '../units/length'
import { forReader, placesOf, type Hazard, type Reading, type Walk } from './hazard'

type Obstacle = Extract<Layout['parts'][number], { readonly kind: 'obstacle' }>

/** Electrical things that a builder can only draw as something else, by what they are called. */
const OUTLET = /outlet|receptacle|socket|switch|junction box/i

const isElectrical = ({ what, name }: Obstacle): boolean =>
  what === 'panel' || what === 'heater' || (what === 'other' && OUTLET.test(name))

const obstaclesOf = ({ plan }: Walk): readonly Obstacle[] =>
  plan.layout.parts.filter((part) => part.kind === 'obstacle')

const spotOf = ({ name, id, at }: Obstacle) => ({ name: name || id, at })

/** Within this of water's edge a receptacle wants GFCI whatever else: NEC 210.8(A)(7), 6 ft (1.8 m), from memory. */
const NEAR_WATER_MM = feet(6)

const standing = (built: Built | undefined): Body | undefined =>
  built?.bodies.find(({ role }) => role === 'equipment')

/** How far an electrical thing stands from the nearest pit. */
const fromPit = (part: Obstacle, pits: readonly Body[], walk: Walk): Reading[] => {
  const body = standing(walk.plan.bay.builtOf.get(part.id))
  if (!body) return []
  const [nearest] = pits
    .map((pit) => ({ pit, gapMm: Math.max(0, gapBetween(body.outline, pit.outline).gapMm) }))
    .sort((a, b) => a.gapMm - b.gapMm)
  if (!nearest) return []
  const { length, name } = walk.write
  const near = forReader(walk.units, '6 ft', '1.8 m')
  const says = `${length(nearest.gapMm)} from ${name(nearest.pit.part)}`
  return [
    {
      name: part.name || part.id,
      says: nearest.gapMm < NEAR_WATER_MM ? `${says}: nearer than ${near}, ask the electrician first` : says,
    },
  ]
}

const pumpsAt = (built: readonly Built[], { write }: Walk): Reading[] =>
  built.flatMap(({ part, pump }) =>
    pump
      ? [
          {
            name: write.name(part),
            says:
              pump.pumps === 1
                ? 'pump, floats and their cords'
                : `${pump.pumps} pumps, floats and their cords`,
          },
        ]
      : [],
  )

/** What the National Electrical Code asks for where it is wet, and where an electrician starts: articles 210.8 and 547. */
const pitPower = (walk: Walk): Hazard[] => {
  const built = walk.plan.bay.built.filter(({ pit }) => pit !== undefined)
  if (built.length === 0) return []
  const pits = built.flatMap(({ bodies }) => bodies.filter(({ role }) => role === 'pit'))
  const powered = obstaclesOf(walk).filter(isElectrical)
  return [
    {
      key: 'electricity',
      title: 'Electricity near the pit',
      words:
        'Pump, heater and receptacle circuits by a licensed electrician, with GFCI/RCD, bonding, in-use covers and drip loops, cords above flood level. Lock out before hands go in the pit.',
      places: placesOf([...pumpsAt(built, walk), ...powered.flatMap((part) => fromPit(part, pits, walk))]),
      sheets: ['floor', 'pipes', 'start-up', 'round', 'safety'],
      stand: 'pit',
      source: 'NEC 110.26, 210.8 and 547',
      spots: powered.map(spotOf),
    },
  ]
}

/** Working space at a panel: NEC 110.26(A), 30 in wide, 36 in deep, 6 ft 6 in high; an electrician confirms. */
const panelHazard = (walk: Walk): Hazard[] => {
  const panels = obstaclesOf(walk).filter(({ what }) => what === 'panel')
  if (panels.length === 0) return []
  const { onTape } = walk.write
  return [
    {
      key: 'panel',
      title: 'Electrical panel',
      words: 'Nothing stands in front of it, and everyone knows which breaker stops the pump.',
      places: placesOf(
        panels.map(({ name, id, clearFrontMm, clearToMm }) => ({
          name: name || id,
          says: `${onTape(clearFrontMm)} kept clear in front, to ${onTape(clearToMm)} over the floor`,
        })),
      ),
      sheets: ['setting-out', 'safety'],
      stand: 'power',
      source: 'NEC 110.26, 210.8 and 547',
      spots: panels.map(spotOf),
    },
  ]
}

const heaterHazard = (walk: Walk): Hazard[] => {
  const heaters = obstaclesOf(walk).filter(({ what }) => what === 'heater')
  if (heaters.length === 0) return []
  const { onTape } = walk.write
  return [
    {
      key: 'heater',
      title: 'Heater',
      words:
        'Keep the clearances on its plate. Air to burn, a whole flue, and a carbon monoxide alarm that is tested.',
      places: placesOf(
        heaters.map(({ name, id, undersideMm, clearFrontMm }) => ({
          name: name || id,
          says: `underside ${onTape(undersideMm)} over the floor, ${onTape(clearFrontMm)} kept clear in front`,
        })),
      ),
      sheets: ['setting-out', 'round', 'safety'],
      stand: 'power',
      source: 'Common practice, and the plate on the heater',
      spots: heaters.map(spotOf),
    },
  ]
}

/** What current and flame can do, at the pits and elsewhere. */
export const powerHazardsOf = (walk: Walk): readonly Hazard[] => [
  ...pitPower(walk),
  ...panelHazard(walk),
  ...heaterHazard(walk),
]
