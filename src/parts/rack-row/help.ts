import type { RackRow } from './schema'

/** What is said under a field to whoever opens it. It stands apart from the schema so that the bay is drawn before it has loaded. */
export const rackRowHelp: { readonly [K in keyof RackRow]?: string } = {
  lines: 'Towers on one hanger bar.',
  weighedKg: 'Weigh three on a fish scale and type the heaviest.',
  feed: 'The shorter the way of the water, the more alike the towers; every split costs fittings. A ring takes two lines at least.',
  laterals: 'One a row, half as many as lines for one a pair, or as many as lines for one a line.',
  lateral: 'Poly pipe and drip tubing of one name differ in bore, and neither takes the other’s fittings.',
  lateralAt: 'Under the rails they pass the risers on the inside and rest on the top ties.',
  lateralSagMm: 'Measured or assumed.',
  lateralRiseMm:
    'Measured; less than 0 where the far end lies lower. With water in at the middle: the end of the row over its start.',
  tubeSlackMm:
    'No tube is shorter than the way from its barb to the tower’s top and so much more, so that a tower can be turned.',
  sightTube: 'Shows the head, and lets air out and in.',
  inlet: 'Of a straight feed or a ring; a split one is fed in the middle.',
  riserAt: 'At an end of the row the header runs along it to the middle, at the height of the laterals.',
  riserSide: 'Looking from the start of the row to its end.',
  trimTurns: 'The valve card in the water run sets the trim valves of all zones.',
  endInMm:
    'Of a single rack, of each J2 rack, and of the two ends of other rows, by a third of a rack at most. Rails overhang and sag less between. Runners and gutters stay as long; on short runners gutters overhang too.',
  bracing: 'A riser that nothing braces one way is not screened: it is refused.',
  hold: 'Two anchors, or one tie, at each end of the row and wherever racks meet.',
  carriedBy:
    'By the house: straps in place of riser pairs, for rails and gutter bearers. No risers, runners, feet or braces. What the straps are fixed to is not counted.',
  treated:
    'Its copper is poison to fish where drips reach the water, and wants stainless or coated screws. It costs what the price book has for lumber: put its own price there.',
  drips: 'The stops of the hanger bars are the drip ties: no more are counted. Paint is counted by the foot.',
  rail: 'With J3 this is the small stick; the big one is the next size.',
  oneBit: 'Rails then rise at each sleeve.',
  rackGapMm:
    'Out of the rack length, half at each side. Never less than lets the sleeve slide home, nor more than half a rack.',
  overlapMm: 'Never less than what puts the double wall over the shared riser.',
}
