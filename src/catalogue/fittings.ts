import { sizedFittings } from './barbed'
import { COMMON_PRACTICE, finder } from './lookup'

/** Heading of the shop list under which an item stands. */
export type FittingGroup = 'growing' | 'feet' | 'conduit' | 'gutter' | 'drain' | 'water' | 'fasteners'

/** A thing that is counted, never cut. */
export interface FittingItem {
  readonly key: string
  readonly title: string
  readonly group: FittingGroup
  readonly source: string
}

const group = (name: FittingGroup, titles: Readonly<Record<string, string>>): readonly FittingItem[] =>
  Object.entries(titles).map(([key, title]) => ({ key, title, group: name, source: COMMON_PRACTICE }))

export const fittings: readonly FittingItem[] = [
  ...group('growing', {
    tower: 'Tower',
    hook: 'Tower hook, closed loop',
    'hook-tie': 'Tie that shuts a hook',
  }),
  ...group('feet', {
    'foot-plate': 'Foot plate, 8 x 16 x 2 in block',
    'foot-shim': 'Foot shim stack',
    'trough-block': 'Trough block, 8 x 16 in, packed to height',
  }),
  ...group('conduit', {
    'end-cap': 'Conduit end cap',
    'bar-stop': 'Hanger bar stop',
    'rail-stop': 'Rail stop at the first riser',
  }),
  ...group('gutter', {
    'gutter-joiner': 'Gutter joiner',
    'gutter-end-cap': 'Gutter end cap',
    'gutter-outlet-1/2': 'Gutter outlet, 1/2 in',
    'gutter-outlet-3/4': 'Gutter outlet, 3/4 in',
    'gutter-outlet-1': 'Gutter outlet, 1 in',
    'gutter-outlet-2': 'Gutter outlet, 2 in',
    'gutter-strap': 'Gutter strap to bearer',
    'gutter-shim': 'Gutter shim stack',
  }),
  ...group('drain', {
    drop: 'Drop tube, outlet to drain',
    'drain-hole': 'Hole in the drain crown',
    'drain-wye': 'Drain wye, where a line joins another',
    'drain-cap': 'Drain end cap',
    'drain-bend': 'Drain bend',
    'drain-cleanout': 'Drain cleanout with plug',
  }),
  ...group('water', {
    'main-tee': 'Tee or saddle on the main',
    'main-cap': 'Main end cap',
    pump: 'Pump',
    'foot-strainer': 'Foot strainer',
    'check-valve': 'Check valve',
    filter: 'Filter',
    'bypass-valve': 'Bypass valve, back to the pit',
    'head-box': 'Head box',
    'overflow-tee': 'Overflow tee of a head box',
    'head-box-stand': 'Stand of a head box',
    'sight-tube': 'Sight tube',
    'barb-1/8': 'Microtube barb, 1/8 in',
    'barb-1/4': 'Microtube barb, 1/4 in',
    'goof-plug': 'Goof plug for a hole in a lateral',
  }),
  ...group('water', Object.fromEntries(sizedFittings.map(({ key, title }) => [key, title]))),
  ...group('fasteners', {
    'zip-tie': 'Zip tie, for pipe and tubes',
    screw: 'Screw, 2-1/2 in coated',
    'sleeve-screw': 'Self-drilling screw, #8 x 3/4 in',
  }),
]

/** The counted item of a key, such as `gutter-joiner`. */
export const fittingOf: (key: string) => FittingItem = finder('fitting', fittings, (item) => item.key)
