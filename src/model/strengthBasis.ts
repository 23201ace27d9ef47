import type { ScreenId } from './strength'

/** What a screen rests on, as every view and sheet says it. */
export interface Basis {
  readonly title: string
  /** In words, then in symbols. */
  readonly formula: string
  readonly limit: string
  /** Publication, edition, section or table; or that it is from memory, an assumption, common practice. */
  readonly source: string
  readonly assumptions: readonly string[]
}

export type BasisId = ScreenId | 'stance'

const CONDUIT_SOURCE =
  'No published limit: steel conduit is not tested or listed for structural use and its standards set no least strength (Steel Tube Institute, May 2016). Sizes and weights: Steel Tube Institute, EMT Weights and Dimensions'

const CONDUIT: readonly string[] = [
  'Yield of conduit, as the bay assumes it, and 0.6 of it allowed: an assumption',
  'Modulus of steel 29,000 ksi: from memory',
  'A slip joint carries no moment until it has kinked: it is a hinge',
  'Towers hang where their hooks are drawn; the worst of all hung, spans harvested and one side hung',
]

const SAG_SOURCE =
  'An assumption, after IBC Table 1604.3: farm buildings L/180, greenhouses L/120. Sag of steel that stays straight when unloaded'

const WOOD: readonly string[] = [
  'No. 2 lumber of the species that the bay names, in NDS Supplement Tables 4A and 4B (southern pine from memory)',
  'Wet service factors where the bay says that lumber stands wet; size factors of NELMA, section 8, Table A; no repetitive-member factor',
]

const PERMANENT = 'Towers hang for good: load duration factor 0.9 (NDS Table 2.3.2, from memory)'

const RAIL_HANDS = 'The most that the rail hands down at that riser in any state of load'

const rails = {
  'rail-stress': {
    title: 'Bending of a rail',
    formula:
      'Moment over section modulus, f = M / S; moments of a continuous beam with hinges at its slip joints',
    limit: '0.6 x the assumed yield of conduit; under a proof load, the assumed yield',
    source: CONDUIT_SOURCE,
    assumptions: CONDUIT,
  },
  'rail-sag': {
    title: 'Sag of a rail',
    formula: 'Sag between risers of a continuous beam, from M / EI along it',
    limit:
      'Length of the span over the number that the bay asks, L/180; proof-loaded up to 1.5 times that, L/120',
    source: SAG_SOURCE,
    assumptions: [
      ...CONDUIT,
      'An overhang counts as a span of twice its length: IBC Table 1604.3, from memory',
    ],
  },
  'rail-joint': {
    title: 'Slip joint beside its riser',
    formula: 'Distance along the row from the hinge of the joint to the nearest riser',
    limit: 'Over a riser, or 4 in from one at most; beyond that the rail is proof-loaded',
    source: 'Common practice, no source; slop of a joint from the diameters of both conduits',
    assumptions: ['A slip joint carries no moment until it has kinked: it is a hinge'],
  },
  'rail-uplift': {
    title: 'Rail or bar that lifts',
    formula: 'Least reaction at a riser in any state of load; less than nothing is uplift',
    limit:
      'The frame’s own weight at that riser, and at its neighbours where a runner ties them, over 1.5; straps and bars are held down by nothing',
    source:
      'Statics of a continuous beam; 1.5 after International Building Code 1807.2.3 on overturning of retaining walls, borrowed',
    assumptions: [
      'The spans whose towers hold the rail down are harvested first',
      'The hole holds the rail; of a bar, everything or one side hangs',
      ...CONDUIT.slice(2, 3),
    ],
  },
  'bar-stress': {
    title: 'Bending of a hanger bar',
    formula: 'Moment over section modulus, f = M / S; a beam on two rails with a load at each tower',
    limit: '0.6 x the assumed yield of conduit; under a proof load, the assumed yield',
    source: CONDUIT_SOURCE,
    assumptions: [
      ...CONDUIT.filter((_, index) => index !== 2),
      'Towers are taken down two by two, one of each side: the last one outside a rail may tip a bar that nothing straps down',
    ],
  },
  'bar-sag': {
    title: 'Sag of a hanger bar',
    formula: 'Sag between the rails and at the ends, from M / EI along the bar',
    limit:
      'Length between rails over the number that the bay asks, L/180; proof-loaded up to 1.5 times that, L/120',
    source: SAG_SOURCE,
    assumptions: ['An overhang counts as a span of twice its length: IBC Table 1604.3, from memory'],
  },
} satisfies Partial<Record<BasisId, Basis>>

const risers = {
  'riser-slenderness': {
    title: 'Slenderness of a riser',
    formula: 'Effective length over the side of the board that way, le / d; le = Ke x foot to hole',
    limit: '50; a riser that is more slender is refused whatever it carries',
    source: 'NDS 3.7.1.4',
    assumptions: [
      'Ke = 1 the ways that braces hold it, 2.1 where nothing does (NDS Appendix G, from memory)',
      'A rail ties a riser without a brace to one that has one, along the row and across it',
    ],
  },
  'riser-column': {
    title: 'Riser as a column',
    formula:
      "What buckling leaves of the wood's value, times the board's area: P = CP x Fc* x A, with FcE = 0.822 Emin' / (le/d)^2, a = (1 + FcE/Fc*) / 1.6, CP = a - sqrt(a^2 - FcE/Fc* / 0.8)",
    limit: 'P, for the way in which le/d is greater',
    source: 'NDS 3.7.1',
    assumptions: [...WOOD, PERMANENT, RAIL_HANDS, 'The load stands in the middle of the board'],
  },
  'riser-push': {
    title: 'Push on a riser',
    formula: 'Push times its lever over the section modulus of the board that way, f = F x h / (b d^2 / 6)',
    limit: "Fb' = Fb x CM x CF x CD, x 1.1 on the flat (Cfu)",
    source: 'NDS chapter 4; load duration 1.6 from NDS Table 2.3.2, from memory',
    assumptions: [
      'A person leans or pulls with what the bay assumes, 50 lb, at the height of the rail: an assumption',
      'One riser takes all of it; where it has a brace, from the brace up, else from its foot, which the base holds',
      'Along the row the rail hands a push on to the risers with side braces; across it each pair stands by itself',
      ...WOOD,
    ],
  },
  'hole-net': {
    title: 'Wood left beside a hole',
    formula: 'Load over what the hole leaves of the board, f = P / ((d - hole) x b)',
    limit: 'Fc*, along the grain and short of buckling',
    source: 'NDS 3.1.2 and 3.6.3, from memory',
    assumptions: [...WOOD, PERMANENT, RAIL_HANDS],
  },
  'hole-edge': {
    title: 'Hole and the edge of its riser',
    formula:
      'Middle of the hole to the edge of the face that it goes through, half the board where it is centred',
    limit:
      '1.5 x the conduit, and as a bored stud: at most 40 % of the face (60 % where doubled) and 5/8 in of wood beside it; through the narrow face refused',
    source: 'NDS Table 12.5.1C for load along the grain, l/D to 6; IRC R602.6 for bored studs',
    assumptions: [
      'Holes are drilled in the middle of the face; 1/64 in to one side uses up what 1 in conduit has to spare',
    ],
  },
  'hole-end': {
    title: 'Hole and the top of its riser',
    formula: "Middle of the hole to the riser's top",
    limit: '2 x the conduit at the least, where half the value is left; 4 x for all of it',
    source: 'NDS Table 12.5.1A, load along the grain away from the end, from memory',
    assumptions: [
      'The rule is of solid dowels of 1 in and less: for bigger conduit it only hints, and a proof load tries it',
    ],
  },
  'hole-bearing': {
    title: 'Conduit bearing on its riser',
    formula:
      'Diameter times board times dowel bearing strength over 4, Z = D x l x Fe / 4, Fe = 11,200 G psi',
    limit: 'Z x 0.7 wet x 0.9 permanent x what the end distance leaves',
    source: 'NDS Table 12.3.3 for Fe; Tables 12.3.1A and B and wet factor of 11.3.3 from memory',
    assumptions: [
      'Indicative only: the rule is of solid dowels of 1 in and less, and conduit is a thin tube',
      RAIL_HANDS,
    ],
  },
} satisfies Partial<Record<BasisId, Basis>>

const ground = {
  'ground-bearing': {
    title: 'Feet on the ground',
    formula:
      'Load of the worst foot over its plate; where runners lie on the ground, all of the row over all of them: p = P / A',
    limit: 'What the ground bears, as the bay says; 1500 psf presumed',
    source: 'IBC Table 1806.2, from memory: presumptive value of clay and silt',
    assumptions: [
      'A foot bears what its rail hands down at most and its share of all else',
      'Firm, undisturbed ground: loose, filled or muddy ground settles long before it fails, so look at gutter levels after a wetting',
      'A foot that stands nearer to an open pit than the pit is deep (1:1) presses on its wall, which must be built to hold the ground: a competent person judges the soil',
    ],
  },
  'house-load': {
    title: 'Row hung from the house',
    formula:
      'All of the row over the floor that it covers, leaves included, q = W / (L x B); and the worst hanger',
    limit:
      'The collateral load that the maker of the house gives in writing, and 100 lb at mid span of a purlin; without a figure refused',
    source:
      'Bartok, citing the National Greenhouse Manufacturers Association: plant loads up to 15 psf, 100 lb at mid span of purlins and trusses. High tunnel frames are mostly not made to carry crops (Alabama Extension)',
    assumptions: ['A crop that hangs for good counts as dead load; snow and wind come on top of it'],
  },
  stance: {
    title: 'Stance against a push',
    formula:
      'Weight times its distance to the edge of the base over the height of the rails, F = W x a / h; safety = F over the push',
    limit:
      'Stands from 1.5 times the push, Shaky from 1, else Tips. Towers of one side within 0.8 of half the base, risers no taller than 2.5 bases, or it is tied',
    source: '1.5: IBC 1807.2.3, of retaining walls, borrowed. The other two: common practice, no source',
    assumptions: [
      'A person pushes or pulls with what the bay assumes, 50 lb, at the height of the rails: an assumption',
      'Racks that share risers or runners tip together, racks that come apart one by one; across the row or along it, whichever takes less',
      'Empty, one side hung, and full; an empty row is the one that tips most easily',
      'A held row stands by its anchors or ties, which are pulled at to test them before anything hangs',
      'Level ground, hard enough for the edge of the base',
    ],
  },
} satisfies Partial<Record<BasisId, Basis>>

/** What every screen, and the stance, rests on. */
export const strengthBasis: Readonly<Record<BasisId, Basis>> = { ...rails, ...risers, ...ground }
