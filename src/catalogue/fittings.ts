import type { CountGroup } from '../model/countLine'
import type { CountUnit } from '../units/writeCount'
import { sizedFittings } from './barbed'
import { conduits } from './conduit'
import { gutters } from './gutter'
import { COMMON_PRACTICE, finder } from './lookup'
import { outlets } from './outlet'
import { drainPipes, polys } from './pipe'
import { pumpCurves } from './pumpCurves'
import { shimSizes } from './shims'

/** A thing that is counted, never cut. */
export interface FittingItem {
  /** Its noun and, where it comes in sizes, the size: `gutter-joiner-5in`. */
  readonly key: string
  /** What it is in any size: `gutter-joiner`. */
  readonly noun: string
  readonly title: string
  readonly group: CountGroup
  readonly unit: CountUnit
  /** Work that the crew does, such as a hole: counted, never bought. */
  readonly isWork: boolean
  readonly source: string
}

type Row = Pick<FittingItem, 'key' | 'noun' | 'title'>

const one = (noun: string, title: string): Row[] => [{ key: noun, noun, title }]

/** One row a size: its key after the noun, its words after the title. */
const inSizes = (noun: string, title: string, sizes: readonly (readonly [string, string])[]): Row[] =>
  sizes.map(([size, words]) => ({ key: `${noun}-${size}`, noun, title: `${title}, ${words}` }))

const inInches = (keys: readonly string[]) => keys.map((key) => [key, `${key} in`] as const)

/** `5in` of `gutter-5in`. */
export const sizeOf = (key: string): string => key.slice(key.indexOf('-') + 1)

const named = (rows: readonly { readonly key: string; readonly title: string }[]) =>
  rows.map(({ key, title }) => [sizeOf(key), title] as const)

const inTrade = inInches(conduits.map(({ trade }) => trade))
const inGutters = named(gutters)
const inDrains = named(drainPipes)
const inShims = inInches(shimSizes)
const inPipes = polys
  .filter(({ family }) => family === 'poly-pipe')
  .map(({ key, title }) => [key, title] as const)
const inPumps = [...pumpCurves.map(({ key, title }) => [key, title] as const), ['own', 'your own'] as const]
/** Bores of overflow pipes. */
const inOverflows = inInches(['1', '1-1/2', '2', '3', '4'])

/** From the first, which is the smallest, up. */
const drainReducers = drainPipes.flatMap((big, index) =>
  drainPipes.slice(0, index).map((small) => ({
    key: `drain-reducer-${sizeOf(big.key)}-to-${sizeOf(small.key)}`,
    noun: 'drain-reducer',
    title: `Drain reducer, ${big.title} to ${small.title}`,
  })),
)

const unitOf = (noun: string): CountUnit => {
  if (noun === 'pit-lining' || noun === 'pit-lid') return 'ft2'
  return noun === 'ptfe-tape' || noun === 'conduit-paint' ? 'ft' : 'piece'
}

const WORK: ReadonlySet<string> = new Set(['rail-hole', 'sleeve-hole', 'drain-hole', 'bell-joint'])

const group = (name: CountGroup, ...rows: readonly (readonly Row[])[]): readonly FittingItem[] =>
  rows.flat().map(({ key, noun, title }) => ({
    key,
    noun,
    title,
    group: name,
    unit: unitOf(noun),
    isWork: WORK.has(noun),
    source: COMMON_PRACTICE,
  }))

export const fittings: readonly FittingItem[] = [
  ...group(
    'growing',
    one('tower', 'Tower'),
    one('hook', 'Tower hook, closed loop'),
    one('hook-tie', 'Tie that shuts a hook'),
  ),
  ...group(
    'feet',
    one('foot-plate', 'Foot plate, 8 x 16 x 2 in block'),
    inSizes('foot-shim', 'Foot shim', inShims),
    one('trough-block', 'Trough block, 8 x 16 in, packed to height'),
    one('ground-anchor', 'Ground anchor with its strap'),
  ),
  ...group(
    'conduit',
    inSizes('end-cap', 'Conduit end cap', inTrade),
    inSizes('bar-stop', 'Hanger bar stop', inTrade),
    inSizes('rail-stop', 'Rail stop at the first riser', inTrade),
    inSizes('rail-clamp', 'Clamp of two lapped rails', inTrade),
    one('house-strap', 'Strap from the house frame, for a rail and a bearer'),
    one('conduit-paint', 'Paint or sleeving on conduit'),
    one('rail-hole', 'Hole in a riser for a rail'),
    one('sleeve-hole', 'Hole in a riser for a sleeve or big rail'),
  ),
  ...group(
    'gutter',
    inSizes('gutter-joiner', 'Gutter joiner', inGutters),
    inSizes('gutter-end-cap', 'Gutter end cap', inGutters),
    inSizes('gutter-outlet', 'Gutter outlet', inInches(outlets.map(({ key }) => key))),
    inSizes('gutter-strap', 'Gutter strap to bearer', inGutters),
    inSizes('gutter-shim', 'Gutter shim', inShims),
  ),
  ...group(
    'drain',
    one('drop', 'Drop tube, outlet to drain'),
    one('drain-hole', 'Hole in the drain crown'),
    inSizes('drain-tee', 'Drain tee under an outlet', inDrains),
    inSizes('drain-wye', 'Drain wye, where a line joins another', inDrains),
    drainReducers,
    inSizes('drain-cap', 'Drain end cap', inDrains),
    inSizes('drain-bend', 'Drain bend', inDrains),
    inSizes('drain-cleanout', 'Drain cleanout with plug', inDrains),
    one('bell-joint', 'Bell joint of drain pipe, pushed home'),
  ),
  ...group(
    'water',
    inSizes('pump', 'Pump', inPumps),
    one('foot-strainer', 'Foot strainer'),
    inSizes('check-valve', 'Check valve, threaded', inPipes),
    inSizes('filter', 'Filter, threaded', inPipes),
    inSizes('bypass-valve', 'Bypass valve, back to the pit', inPipes),
    one('head-box', 'Head box'),
    one('overflow-tee', 'Overflow tee of a head box'),
    one('head-box-stand', 'Stand of a head box'),
    one('sight-tube', 'Sight tube'),
    inSizes('barb', 'Microtube barb', inInches(['1/8', '1/4'])),
    one('goof-plug', 'Goof plug for a hole in a lateral'),
    sizedFittings,
    one('ptfe-tape', 'PTFE tape for threads'),
  ),
  ...group(
    'pit',
    one('pit-lining', 'Pit lining, one sheet'),
    one('pit-lid', 'Pit lid, boards or sheet'),
    one('pit-boot', 'Boot where a pipe comes through the lining'),
    inSizes('overflow-pipe', 'Overflow through the pit wall', inOverflows),
    inSizes('overflow-screen', 'Screen on the overflow', inOverflows),
    one('make-up-valve', 'Make-up float valve'),
    one('pump-float', 'Pump-off float switch'),
    one('alarm-float', 'Alarm float, low or high water'),
  ),
  ...group(
    'fasteners',
    one('zip-tie', 'Zip tie, for pipe and tubes'),
    one('screw', 'Screw, 2-1/2 in coated'),
    one('sleeve-screw', 'Self-drilling screw, #8 x 3/4 in'),
    one('row-tie', 'Tie to a wall post or the next row'),
  ),
]

/** The counted item of a key, such as `gutter-joiner-5in`. */
export const fittingOf: (key: string) => FittingItem = finder('fitting', fittings, (item) => item.key)
