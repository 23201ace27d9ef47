import { COMMON_PRACTICE, finder } from './lookup'

/** Work that is counted by what is built. */
export type LabourTask =
  | 'set-out'
  | 'riser-cut'
  | 'member-cut'
  | 'pair-assemble'
  | 'pair-stand'
  | 'runner-fix'
  | 'bearer-fix'
  | 'brace-fix'
  | 'anchor-set'
  | 'tie-fix'
  | 'strap-hang'
  | 'conduit-paint'
  | 'rail-lay'
  | 'bar-hang'
  | 'gutter-lay'
  | 'outlet-set'
  | 'bearer-shim'
  | 'block-set'
  | 'trench-dig'
  | 'drain-lay'
  | 'pit-dig'
  | 'pit-finish'
  | 'zone-set'
  | 'lateral-lay'
  | 'supply-lay'
  | 'tube-set'
  | 'tower-hang'
  | 'pump-station'
  | 'head-box-set'
  | 'fill'
  | 'leak-test'
  | 'flow-test'

/** Minutes of one person for one of what is built; a crew's own clock is better. */
export interface LabourNorm {
  readonly task: LabourTask
  readonly title: string
  /** What it is for each of. */
  readonly unit: string
  readonly minutes: number
  readonly source: string
}

const TEN_FEET = '10 ft'
const PIECE = 'piece'

const norm = (
  task: LabourTask,
  title: string,
  unit: string,
  minutes: number,
  source = COMMON_PRACTICE,
): LabourNorm => ({ task, title, unit, minutes, source })

/** Ours, for work that the trade's table of norms leaves out. */
const GUESS = 'own estimate, no source'

/** In the order of the work. Digging is by hand in loam: a machine trenches 10 ft in about 15 min, and costs its hire. */
export const labourNorms: readonly LabourNorm[] = [
  norm('set-out', 'Set out a peg and shoot its level', 'peg', 10),
  norm('riser-cut', 'Cut and drill a riser, with stop and jig', PIECE, 2.5),
  norm('member-cut', 'Cut a cross-piece, brace, bearer or splice plate', PIECE, 1.5),
  norm('pair-assemble', 'Assemble a riser pair', 'pair', 9),
  norm('pair-stand', 'Stand, shim and plumb a pair', 'pair', 8),
  norm('runner-fix', 'Fix a runner piece and its splice', PIECE, 7),
  norm('bearer-fix', 'Fix a bearer', PIECE, 3),
  norm('brace-fix', 'Fix a brace', PIECE, 4),
  norm('anchor-set', 'Drive a ground anchor and strap it', 'anchor', 12, GUESS),
  norm('tie-fix', 'Fix a tie from a riser to a post', 'tie', 8, GUESS),
  norm('strap-hang', 'Hang a strap from the house and level it', 'strap', 10, GUESS),
  norm('conduit-paint', 'Paint or sleeve conduit', TEN_FEET, 6, GUESS),
  norm('rail-lay', 'Lay a rail stick and its sleeve', 'stick', 4),
  norm('bar-hang', 'Hang a bar, with caps and stops', 'bar', 2.5),
  norm('gutter-lay', 'Lay a gutter section', 'section', 6),
  norm('outlet-set', 'Set an outlet', 'outlet', 10),
  norm('bearer-shim', 'Shim a line on a bearer', 'line', 1),
  norm('block-set', 'Set a trough block to height', 'block', 5, GUESS),
  norm('trench-dig', 'Dig a drain trench by hand', TEN_FEET, 75),
  norm('drain-lay', 'Lay drain pipe: bed, level, hole', TEN_FEET, 25),
  norm('pit-dig', 'Dig a pit by hand in loam', 'yd³', 120),
  norm('pit-finish', 'Line a pit and make its lid', 'pit', 360),
  norm('zone-set', 'Set a zone’s valves and header', 'zone', 45),
  norm('lateral-lay', 'Lay a lateral', TEN_FEET, 5),
  norm('supply-lay', 'Lay main, pump pipe and zone pipe', TEN_FEET, 10, GUESS),
  norm('tube-set', 'Microtube: punch, barb, cut, tie', 'tower', 2),
  norm('tower-hang', 'Hook and hang a tower', 'tower', 1),
  norm('pump-station', 'Set up a pump station', 'station', 720),
  norm('head-box-set', 'Set up a head box on its stand', 'box', 180, GUESS),
  norm('fill', 'Fill the bay', 'bay', 240),
  norm('leak-test', 'Test a zone for leaks', 'zone', 20),
  norm('flow-test', 'Test the flow of a tower', 'tower', 1.5),
]

/** The norm of a task. */
export const labourNormOf: (task: string) => LabourNorm = finder(
  'labour norm',
  labourNorms,
  ({ task }) => task,
)
