import type { Settings } from '../layout/settings'
import type { Built, Stick } from '../model/built'
import type { Finding, Mend, StateWord } from '../model/finding'
import type { RackFacts } from '../model/rackFacts'
import type { PartRule } from './context'
import { found } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'fish-drip-clear'

const isOver = ({ from, to }: Stick, levelMm: number): boolean => Math.max(from.z, to.z) > levelMm

/** What of a stock stands higher than the lips of the troughs, so that it drips into them. */
const drippers = ({ sticks }: Built, { lipHighMm }: RackFacts, stock: string): number =>
  sticks.filter((stick) => stick.stock.startsWith(stock) && isOver(stick, lipHighMm)).length

interface Dripping {
  readonly what: 'lumber' | 'conduit'
  readonly state: StateWord
  readonly pieces: number
  readonly mend: Mend
}

/** Copper in preserved lumber kills; zinc off conduit gathers, worst in soft water, and is measured in the tank. */
const dripping = (built: Built, rack: RackFacts): readonly Dripping[] => {
  const set = (field: string, value: string): Mend => ({ kind: 'set', part: built.part, field, value })
  const seen: readonly Dripping[] = [
    {
      what: 'lumber',
      state: 'Clash',
      pieces: rack.treated === 'all' ? drippers(built, rack, 'lumber') : 0,
      mend: set('treated', 'base'),
    },
    {
      what: 'conduit',
      state: 'Tight',
      pieces: rack.drips === 'bare' ? drippers(built, rack, 'conduit') : 0,
      mend: set('drips', 'tied'),
    },
  ]
  return seen.filter(({ pieces }) => pieces > 0)
}

const check = (built: Built, { fishWater }: Settings): Finding[] => {
  const { rack, trough, part } = built
  if (!rack || !trough || !fishWater) return []
  return dripping(built, rack).map(({ what, pieces, ...rest }) =>
    found({
      rule: RULE,
      subject: 'fit',
      parts: [part],
      at: rowPlace(rack),
      measured: { value: pieces, unit: 'count' },
      limit: { value: 0, unit: 'count' },
      facts: { what },
      detail: what,
      ...rest,
    }),
  )
}

/** What drips into a trough goes home to the fish. */
export const fishDripClear: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Drips over water with fish',
  limit: 'No preserved lumber and no bare galvanised conduit over a trough whose water goes back to fish',
  source:
    'Copper and zinc criteria of fresh water, 40 CFR 132 Table 1: acute at 13 and 117 µg/L in water of 100 mg/L hardness',
  mending:
    'Take lumber that is not preserved above the troughs; turn drips aside with ties and caps, or paint the conduit.',
  check,
  say: ({ parts, measured, facts }, { name }) =>
    facts['what'] === 'lumber'
      ? `${measured.value} pieces of preserved lumber in ${name(parts[0] ?? '')} drip into troughs whose water goes back to fish: their copper kills them.`
      : `${measured.value} pieces of bare galvanised conduit in ${name(parts[0] ?? '')} drip into troughs whose water goes back to fish: zinc gathers there.`,
}
