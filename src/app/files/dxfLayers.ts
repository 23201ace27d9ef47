import type { Pen, Wash } from '../../model/drawing'

type InkPen = Exclude<Pen, 'none'>

/** What a line is of, in capitals as drawings for CAD have it; one name for each pen. */
export const layerOfPen: Readonly<Record<InkPen, string>> = {
  outline: 'OUTLINE',
  wall: 'WALL',
  timber: 'TIMBER',
  steel: 'STEEL',
  trough: 'TROUGH',
  drain: 'DRAIN',
  water: 'WATER',
  crop: 'CROP',
  centre: 'CENTRE',
  hidden: 'HIDDEN',
  'keep-clear': 'KEEP-CLEAR',
  dimension: 'DIMENSION',
  grid: 'GRID',
  'must-fix': 'MUST-FIX',
  note: 'NOTE',
}

/** What a shape without an outline is of; undefined for the paper's own shades, which are no thing. */
const layerOfWash: Readonly<Record<Wash, string | undefined>> = {
  none: undefined,
  paper: undefined,
  house: undefined,
  crop: 'CROP',
  timber: 'TIMBER',
  steel: 'STEEL',
  trough: 'TROUGH',
  drain: 'DRAIN',
  water: 'WATER',
  pit: 'WATER',
  post: 'OUTLINE',
  'keep-clear': 'KEEP-CLEAR',
  'must-fix': 'MUST-FIX',
}

/** Title block, key and whatever else lies round the drawing at no true size. */
export const SHEET_LAYER = 'SHEET'

/** Colour numbers that every CAD knows; 7 is black on white and white on black. */
export const colours: Readonly<Record<string, number>> = {
  OUTLINE: 7,
  WALL: 7,
  TIMBER: 32,
  STEEL: 8,
  TROUGH: 4,
  DRAIN: 5,
  WATER: 140,
  CROP: 3,
  CENTRE: 9,
  HIDDEN: 8,
  'KEEP-CLEAR': 6,
  DIMENSION: 7,
  GRID: 254,
  'MUST-FIX': 1,
  NOTE: 7,
  [SHEET_LAYER]: 8,
}

/** The layer of a mark; undefined where it is nothing but a shade. */
export const layerOf = (pen: Pen, wash: Wash): string | undefined =>
  pen === 'none' ? layerOfWash[wash] : layerOfPen[pen]
