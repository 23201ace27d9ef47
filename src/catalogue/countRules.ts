import { fittingOf } from './fittings'

/**
 * How each thing is counted, in the crew's words, by its noun. They say what the parts do when they are derived, and stand
 * apart from it because only who opens a line reads them.
 */
const rules: Readonly<Record<string, string>> = {
  tower: '1 at every station of every line, but for those taken out.',
  hook: '1 a tower.',
  'hook-tie': '1 a hook: it shuts the loop, so that a knocked tower stays on its bar.',

  'foot-plate': '1 a riser; none where the row has no foot plates.',
  'foot-shim':
    'Each foot that stands lower than the highest of its datum has a stack as high as that, to 1/16 in, of the thickest pieces first: 1, 1/2, 1/4, 1/8, 1/16 in.',
  'trough-block':
    'Under a trough on the floor: one at each end and no two more than 24 in apart, clear of the outlet.',
  'ground-anchor': '2 a braced pair, where a row is anchored: at its ends and wherever racks meet.',

  'end-cap':
    '2 a hanger bar, and 1 on either end of each line of rail; 2 a rail where rails lap. Ends inside a sleeve have none.',
  'bar-stop': '4 a hanger bar: on either side of both rails.',
  'rail-stop': '1 a line of rail, at the first riser, so that the whole line cannot creep.',
  'rail-clamp': '2 wherever two rails lap, one on either side of the riser.',
  'house-strap':
    '2 wherever a riser pair would stand; each carries a rail, and under it an end of the gutter bearer.',
  'conduit-paint': 'The length of all rails, sleeves and hanger bars of a row whose conduit is painted.',
  'rail-hole': '1 through each riser that takes a plain rail, 2 where two rails lap. Work, nothing to buy.',
  'sleeve-hole': '1 through each riser that takes a sleeve or the big rail. Work, nothing to buy.',

  'gutter-joiner': '1 between two sections of a trough.',
  'gutter-end-cap': '2 a trough.',
  'gutter-outlet': '1 a trough, in the bore that the row asks for.',
  'gutter-strap': '1 on each bearer under each trough.',
  'gutter-shim':
    'Under each trough on each bearer a stack from the bearer’s top to the invert, to 1/16 in, of the thickest pieces first: 1, 1/2, 1/4, 1/8, 1/16 in.',

  drop: '1 an outlet that has a drain in reach.',
  'drain-hole': '1 an outlet, in the crown of its drain. Work, nothing to buy.',
  'drain-tee': '1 an outlet over a drain too thin for the hole.',
  'drain-wye': '1 where a line comes into another, in the size of the line that takes the water.',
  'drain-reducer': '1 at a wye whose branch is of another size.',
  'drain-cap': '1 at the high end of a line that has no cleanout there.',
  'drain-bend': '1 wherever the line turns by 5 degrees or more.',
  'drain-cleanout':
    'As the line asks: at its high end and every bend, and between them where they lie over 100 ft apart.',
  'bell-joint': '1 between two sticks of a leg. Work, nothing to buy: the bell is part of the stick.',

  saddle: '1 a zone, on a main bigger than its pipe. It has 1 barb, for the zone’s pipe.',
  pump: 'As many as the pit says, side by side.',
  'foot-strainer': '1 a pump, if the pit has them.',
  'check-valve': '1 a pump, if the pit has them.',
  filter: 'None, 1 or 2 in parallel, as the pit says.',
  'bypass-valve': '1 a pit with a bypass.',
  'head-box': '1 a head box.',
  'overflow-tee': '1 a head box.',
  'head-box-stand': '1 a head box.',
  'sight-tube': '1 at each lateral end that has one, and 1 on either side of each filter.',
  barb: '1 a tower: it is pushed into the lateral, and the tube on to it.',
  'goof-plug': '2 in 100 towers of a row, rounded up, for holes that went wrong.',

  elbow:
    '1 at the foot and 1 at the head of a riser pipe, 1 where the header ends in its last lateral, and 1 wherever a pipe turns. 2 barbs.',
  tee: '1 on the header for each lateral but the last, 1 at each middle that a split lateral is fed at, and 1 where pipes branch. 3 barbs.',
  coupling:
    'Where two coils of one run meet, where the inner ends of a double split meet, and where a main goes straight on. 2 barbs.',
  'reducing-coupling': '1 wherever a pipe meets one of another size. 1 barb of either size.',
  'family-adapter':
    '1 wherever poly pipe meets drip tubing; no shop has it in one piece. 1 barb of either kind.',
  adapter:
    '2 a zone’s valves, 1 a pump, 2 a filter, 1 a bypass: wherever barbed pipe goes into a thread. 1 barb.',
  nipple:
    'Between two things whose threads are inside: 2 in a zone’s valves; from pump to union 1, and 2 more with a check valve; 2 a filter, and 2 more where it can be shut off.',
  union:
    '1 a zone’s valves; either side of each check valve, or 1 a pump without; either side of each filter.',
  'ball-valve': '1 a zone, and either side of each of two filters.',
  'trim-valve': '1 a zone: it is set once, by the sight tube.',
  'sight-tube-tee': '1 a sight tube. 3 barbs.',
  'lateral-flush-cap': '1 at each open end of a lateral, if the row has caps. 1 barb.',
  'lateral-flush-valve': '1 at each open end of a lateral, if the row has valves. 1 barb.',
  'lateral-plug': '1 at each open end of a lateral that is not to be flushed. 1 barb.',
  'main-cap': '1 at each end of a main that nothing joins. 1 barb.',
  'pipe-strap': 'Every 24 in along a main, wherever it hangs over 12 in from the floor.',
  clamp:
    '1 on each barbed end; 2, screw heads opposite, on pipe of 1-1/4 in and over, on any that is buried, and between pump and filter. Barbs: coupling, elbow and reducing coupling 2, tee 3, adapter, cap, plug and saddle 1.',
  'ptfe-tape': '4 turns on every thread outside: 1 thread an adapter, 2 a nipple.',

  'pit-lining':
    'One sheet, folded into the corners: the floor and both walls each way, and 12 in over the rim all round. None where the pit has no lining.',
  'pit-lid': 'The rim, and 4 in past it all round.',
  'pit-boot': '1 for each drain that comes into the pit, and 1 for its overflow.',
  'overflow-pipe': '1 a pit.',
  'overflow-screen': '1 a pit.',
  'make-up-valve': '1 a pit that is filled up by a float.',
  'pump-float': '1 a pit with a pump.',
  'alarm-float': '2 a pit: one calls at the low alarm, one before the overflow runs.',

  'zip-tie': '1 wherever a lateral crosses a bar, 2 a fitting of a row’s pipes, 1 a tower for its tube.',
  screw:
    '18 a riser pair (3 in each of its joints: to cross-piece, top tie and runner, twice), 8 a splice plate, 4 a gutter bearer, 6 a brace. On short runners 6 a runner, and none for its risers’ own joints with it. Spares are on the shop list.',
  'sleeve-screw': '2 wherever two rails meet, one in each, from underneath; none where rails lap.',
  'row-tie': '1 a braced pair, where a row is tied: at its ends and wherever racks meet.',
}

/** How a fitting is counted. Every key of the catalogue has one. */
export const countRule = (item: string): string => rules[fittingOf(item).noun] ?? ''

/** How pieces of each member are counted, by their mark; pipes and tubes by their role. */
const pieceRules: Readonly<Record<string, string>> = {
  'RS-p': '2 a riser pair, less those with a sleeve hole.',
  'RS-s': '2 wherever two racks meet.',
  'RS-d': '2 wherever two racks meet and their rails lap.',
  BX: '1 a riser pair.',
  TT: '1 a riser pair.',
  BR: '2 lines a row, each in equal pieces that a board gives; between racks that come apart both are cut.',
  SP: '1 wherever two pieces of a runner meet.',
  SB: '2 in each end bay of a row, and 2 more for every 40 ft beyond; of racks that come apart 2 in each end bay.',
  XB: '1 at either end of a row and wherever two racks meet; of racks that come apart 1 at either end.',
  RL: '2 a rack.',
  'RL-b': '2 a rack that is railed in the bigger conduit.',
  SV: '2 wherever two racks meet.',
  DW: '2 wherever two racks meet.',
  HB: '1 a station.',
  GB: '1 at each end of the gutters and no two more than 24 in apart; on short runners, and where the house carries the row, 1 a riser pair.',
  GT: 'As many sections a line as its length takes.',
  lateral: 'The row’s length, 1 % over for slack, and 12 in at each open end.',
  header: 'Across the row from the riser pipe to the last lateral, 1 % over.',
  'sub-header': 'From the middle to both quarters of a lateral, 1 % over.',
  'riser-pipe': 'From the foot to the laterals, 1 % over.',
  microtube: '1 a tower, cut to its length.',
  drain: 'The line as it lies, in sticks.',
  main: 'The line as it lies.',
  'zone-pipe': 'From the main, or from the row whose valve it shares, to the row, 1 % over.',
  'pump-pipe': 'From each pump out of the pit, and from there to the main, 1 % over.',
}

export const pieceRule = (mark: string): string => pieceRules[mark] ?? ''
