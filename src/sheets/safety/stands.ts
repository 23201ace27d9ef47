import type { Hazard, Stand } from '../hazard'

/** Where one stands, in the order in which the job comes to it. */
const STANDS: readonly { readonly stand: Stand; readonly title: string }[] = [
  { stand: 'trench', title: 'Trench' },
  { stand: 'pit', title: 'Pit' },
  { stand: 'power', title: 'Power' },
  { stand: 'saw', title: 'Saw' },
  { stand: 'racks', title: 'Racks' },
  { stand: 'water', title: 'Water' },
  { stand: 'crop', title: 'Harvest' },
]

/** What there is to mind in one place of work. */
export interface StandGroup {
  readonly stand: Stand
  readonly title: string
  readonly hazards: readonly Hazard[]
}

/** Hazards by where one stands; a place of work without any is left out. */
export const byStand = (hazards: readonly Hazard[]): readonly StandGroup[] =>
  STANDS.map(({ stand, title }) => ({
    stand,
    title,
    hazards: hazards.filter((hazard) => hazard.stand === stand),
  })).filter((group) => group.hazards.length > 0)
