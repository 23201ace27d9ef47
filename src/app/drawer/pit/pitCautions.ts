/**
 * What whoever builds or enters a pit must be told, beside the step where it counts. Common practice, no source, but for the
 * electrical sentence, which says what the National Electrical Code asks for where wet: 210.8 and 547, from memory.
 */
export const PIT_CAUTIONS: readonly { readonly title: string; readonly words: string }[] = [
  {
    title: 'Electricity and water',
    words:
      'Pump, heater and receptacle circuits by a licensed electrician: GFCI/RCD, bonding, in-use covers, drip loops, cords above flood level. People have died of faulty pumps in pits: lock out before hands go in.',
  },
  {
    title: 'Drowning and falls',
    words:
      'A lid that bears a person, locked or too heavy for a child, no gap wider than 4 in (100 mm), a kerb round it, children and visitors kept off. Never go in alone: bad air gathers there. Know beforehand how you would get someone out.',
  },
  {
    title: 'Overflow',
    words:
      'Screened, with an air gap, to where the law lets it run: fish water may be regulated. An air gap on the make-up too.',
  },
]
