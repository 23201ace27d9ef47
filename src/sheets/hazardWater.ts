import type { Built, Stick } from '../model/built'
import type { CountLine } from '../model/countLine'
import { thousands } from '../units/thousands'
import { forReader, namesTogether, placesOf, type Hazard, type Walk } from './hazard'

const hasTowers = ({ plan }: Walk): boolean => plan.towers > 0

const waterGoesHome = ({ plan }: Walk): boolean =>
  plan.bay.built.some(({ pit, trough }) => pit !== undefined || trough !== undefined)

const nounOf = ({ item }: CountLine): string => item.replace(/-(?:pe|drip|drain)-.*$/, '')

const countsOf = ({ plan }: Walk, nouns: ReadonlySet<string>): readonly CountLine[] =>
  plan.counts.filter((line) => line.count > 0 && nouns.has(nounOf(line)))

/** What a thing is called in any size: `ball valve` of `Ball valve, threaded, 1 in poly pipe`. */
const kindsIn = (lines: readonly CountLine[]): string => {
  const kinds = new Set(lines.map(({ title }) => title.replace(/,.*/, '').toLowerCase()))
  return [...kinds].sort().join(', ')
}

const isOver = ({ from, to }: Stick, levelMm: number): boolean => Math.max(from.z, to.z) > levelMm

/** What of a row's lumber stands higher than the lips of its gutters, by its marks. */
const splashed = ({ rack, sticks }: Built): readonly string[] =>
  rack === undefined
    ? []
    : [
        ...new Set(
          sticks
            .filter((stick) => stick.stock.startsWith('lumber') && isOver(stick, rack.lipHighMm))
            .map(({ mark }) => mark),
        ),
      ].sort()

const rowsWith = (walk: Walk, says: (built: Built) => string): readonly string[] =>
  placesOf(
    walk.plan.bay.built.flatMap((built) => {
      const said = says(built)
      return said === '' ? [] : [{ name: walk.write.name(built.part), says: said }]
    }),
  )

/** Which members may drip is of this plan; whether the lumber is treated the yard's stamp says. */
const treated = (walk: Walk): Hazard[] => {
  const places = rowsWith(walk, (built) => splashed(built).join(', '))
  if (places.length === 0) return []
  return [
    {
      key: 'treated-lumber',
      title: 'Treated lumber',
      words:
        'Its copper poisons fish: none higher than a gutter (these marks), no sawdust in the pit, none burnt.',
      places,
      sheets: ['saw-list', 'assembly', 'shop', 'safety'],
      stand: 'saw',
      source: 'Common practice, no source; the end tag of the lumber',
      spots: [],
    },
  ]
}

/** Bradley and Sprague (1985) on zinc, pH and hardness; Boyd, Global Seafood Advocate, on copper; from memory. */
const METALS_SOURCE = 'Bradley and Sprague 1985 on zinc, Boyd on copper'

const drippingSteel = (walk: Walk): Hazard[] => {
  const places = rowsWith(walk, ({ rack, sticks, trough }) => {
    const bars = sticks.filter(({ mark }) => mark === 'HB').length
    return rack && trough && bars > 0 ? `${thousands(bars)} bars over ${trough.lines} gutters` : ''
  })
  if (places.length === 0) return []
  return [
    {
      key: 'dripping-steel',
      title: 'Zinc over the gutters',
      words: 'It poisons fish, so caps on both ends of every bar, and a drip tie each side of every hook.',
      places,
      sheets: ['assembly', 'shop', 'safety'],
      stand: 'racks',
      source: METALS_SOURCE,
      spots: [],
    },
  ]
}

/** What comes in metal as well as in plastic. */
const IN_METAL: ReadonlySet<string> = new Set([
  'ball-valve',
  'trim-valve',
  'check-valve',
  'bypass-valve',
  'union',
  'nipple',
  'adapter',
  'foot-strainer',
  'make-up-valve',
])

const metalFittings = (walk: Walk): Hazard[] => {
  const lines = countsOf(walk, IN_METAL)
  if (lines.length === 0) return []
  return [
    {
      key: 'metal-fittings',
      title: 'Copper, brass and zinc in the water',
      words: 'They poison fish, so plastic or stainless steel only.',
      places: [kindsIn(lines)],
      sheets: ['pipes', 'shop', 'safety'],
      stand: 'water',
      source: METALS_SOURCE,
      spots: [],
    },
  ]
}

/** Drains here are pushed home; pipe and bends of the kind are often cemented all the same. */
const cement = (walk: Walk): Hazard[] => {
  const lists = walk.plan.cuts.filter(({ stock, lines }) => stock.startsWith('drain-') && lines.length > 0)
  if (lists.length === 0) return []
  return [
    {
      key: 'solvent-cement',
      title: 'Solvent cement',
      words: 'Bells go home dry. Where cemented: moving air, no flame, 24 hours to cure, two flushes.',
      places: [namesTogether(lists.map(({ title }) => title))],
      sheets: ['pipes', 'start-up', 'safety'],
      stand: 'water',
      source: 'Common practice, and the label of the cement',
      spots: [],
    },
  ]
}

const clearing = (walk: Walk): Hazard[] => {
  const tubes = walk.plan.bay.built.reduce((sum, { feed }) => sum + (feed?.tubes.length ?? 0), 0)
  if (tubes === 0) return []
  return [
    {
      key: 'compressed-air',
      title: 'Blowing tubes clear',
      words: `${forReader(walk.units, '15 psi', '100 kPa')} at the most, lateral open at its end, goggles on.`,
      places: [`${thousands(tubes)} microtubes`],
      sheets: ['tubes', 'round', 'safety'],
      stand: 'water',
      source: 'Common practice, no source',
      spots: [],
    },
  ]
}

const chlorine = (walk: Walk): Hazard[] => {
  if (!waterGoesHome(walk)) return []
  const { plan, write } = walk
  const taps = plan.layout.parts.filter((part) => part.kind === 'obstacle' && part.what === 'tap')
  const filled = plan.bay.built.flatMap(({ part, pit }) =>
    pit && pit.makeUpLph > 0
      ? [{ name: write.name(part), says: `make-up ${write.flowTotal(pit.makeUpLph)}` }]
      : [],
  )
  return [
    {
      key: 'chlorine',
      title: 'Chlorine and chloramine',
      words: 'Test and dechlorinate all fill and top-up water; chloramine does not go off by standing.',
      places: placesOf([...filled, ...taps.map(({ name, id }) => ({ name: name || id, says: 'test it' }))]),
      sheets: ['start-up', 'round', 'safety'],
      stand: 'water',
      source: 'Common practice, no source',
      spots: taps.flatMap((tap) => ('at' in tap ? [{ name: tap.name || tap.id, at: tap.at }] : [])),
    },
  ]
}

/** SEAFWA 1980: hydrated lime is used to kill fish in ponds. The burns: safety sheets of lime. */
const lime = (walk: Walk): Hazard[] =>
  waterGoesHome(walk)
    ? [
        {
          key: 'lime',
          title: 'Lime wash',
          words:
            'Goggles, gloves, sleeves; rinse eyes or skin 15 minutes. None into pit, gutter or drain: it kills fish.',
          places: [],
          sheets: ['setting-out', 'start-up', 'round', 'safety'],
          stand: 'water',
          source: 'SEAFWA 1980 on lime in ponds',
          spots: [],
        },
      ]
    : []

/** CTAHR FST-38 (2009) and FST-51 (2012); Wang, Deering and Kim, Horticulturae 2020, found STEC in water and roots. */
const food = (walk: Walk): Hazard[] =>
  hasTowers(walk)
    ? [
        {
          key: 'food',
          title: 'Food',
          words:
            'System water is not clean: never on leaves. Clean hands and tools; hands that touch fish do not harvest.',
          places: [`${thousands(walk.plan.towers)} towers`],
          sheets: ['floor', 'round', 'safety'],
          stand: 'crop',
          source: 'CTAHR FST-38 (2009) and FST-51 (2012)',
          spots: [],
        },
      ]
    : []

export const timberHazardsOf = treated

/** What can hurt fish, eaters and whoever handles the water. */
export const waterHazardsOf = (walk: Walk): readonly Hazard[] =>
  [drippingSteel, metalFittings, cement, clearing, chlorine, lime, food].flatMap((hazard) => hazard(walk))
