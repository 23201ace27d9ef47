import type { z } from 'zod/mini'
import type { Heading } from '../../src/geometry/motion'
import { emptyBay } from '../../src/layout/empty'
import { houseSchema, type House } from '../../src/layout/house'
import { FORMAT, layoutSchema, VERSION, type Layout } from '../../src/layout/schema'
import { settingsSchema, type Settings } from '../../src/layout/settings'
import { fields } from '../../src/model/fields'
import { drainLineSchema, type DrainLine } from '../../src/parts/drain-line/schema'
import { headBoxSchema, type HeadBox } from '../../src/parts/head-box/schema'
import { mainSchema, type Main } from '../../src/parts/main/schema'
import { obstacleSchema, type Obstacle } from '../../src/parts/obstacle/schema'
import { openingSchema, type Opening } from '../../src/parts/opening/schema'
import { rackRowSchema, type RackRow } from '../../src/parts/rack-row/schema'
import { sumpSchema, type Sump } from '../../src/parts/sump/schema'
import { troughSchema, type Trough } from '../../src/parts/trough/schema'
import { feet, inches } from '../../src/units/length'
import { inchesPerFoot } from '../../src/units/slope'

/**
 * A bay as one would sketch it, all in inches: x east, y north, (0, 0) the south-west inside corner.
 * `bay('30 x 96 ft').row('N1', [63, 410], { racks: 3 }).post('Post', [176, 366]).layout()`
 */

/** x, y in inches. */
export type Spot = readonly [x: number, y: number]

/** x, y and, where it has one of its own, the height over the floor, in inches. */
export type MainSpot = Spot | readonly [x: number, y: number, height: number]

/** West to east and south to north, inches. */
export interface Patch {
  readonly x: readonly [number, number]
  readonly y: readonly [number, number]
}

/** The fields of a part without their `Mm`, in inches; falls in inches per foot. */
export type Inches<T> = { readonly [K in keyof T as K extends `${infer Name}Mm` ? Name : K]?: T[K] }

interface Schema<T> {
  readonly shape: Readonly<Record<string, z.core.$ZodType>>
  parse(value: unknown): T
}

const spot = ([x, y]: Spot) => ({ x: inches(x), y: inches(y) })

const mainSpot = ([x, y, height]: MainSpot) =>
  height === undefined ? spot([x, y]) : { ...spot([x, y]), heightMm: inches(height) }

const inMm = (schema: Schema<unknown>, key: string, value: unknown): [string, unknown] => {
  const mmKey = `${key}Mm`
  if (mmKey in schema.shape) return [mmKey, typeof value === 'number' ? inches(value) : value]
  const isFall = schema.shape[key] && fields.get(schema.shape[key])?.unit === 'fall'
  return [key, isFall && typeof value === 'number' ? inchesPerFoot(value) : value]
}

/** The values in the file's own units. */
const converted = (schema: Schema<unknown>, values: object): Record<string, unknown> =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => inMm(schema, key, value)))

/** `'29.33 x 71.33 ft'` or `'352 x 856 in'`, west to east by south to north, in mm. */
const sizeOf = (size: string): readonly [number, number] => {
  const match = /^([0-9.]+) x ([0-9.]+) (ft|in)$/.exec(size)
  if (!match) throw new RangeError(`"${size}" is not a size such as "30 x 96 ft".`)
  const inMmOf = match[3] === 'ft' ? feet : inches
  return [inMmOf(Number(match[1])), inMmOf(Number(match[2]))]
}

/** Middle, and size along and across a heading, of a patch of floor. */
const standing = ({ x, y }: Patch, heading: Heading) => {
  const [width, depth] = [x[1] - x[0], y[1] - y[0]]
  const isAlongY = heading === 90 || heading === 270
  const [length, across] = isAlongY ? [depth, width] : [width, depth]
  const at = spot([(x[0] + x[1]) / 2, (y[0] + y[1]) / 2])
  return { at, heading, lengthMm: inches(length), widthMm: inches(across) }
}

type RowValues = Omit<Inches<RackRow>, 'id' | 'kind' | 'name' | 'at'>
type ObstacleValues = Omit<Inches<Obstacle>, 'id' | 'kind' | 'name' | 'at' | 'length' | 'width'>

export interface Sketch {
  outline(corners: readonly Spot[]): Sketch
  house(
    values: Inches<Omit<House, 'outline' | 'curvedWalls' | 'spotLevels' | 'benchmark' | 'services'>>,
  ): Sketch
  /** Headroom along one wall, counted from the first corner: [from wall, height]. */
  curved(edge: number, profile: readonly Spot[]): Sketch
  level(at: Spot, level: number): Sketch
  benchmark(name: string, at: Spot, level: number): Sketch
  buried(
    what: 'wire' | 'gas' | 'water' | 'drain',
    name: string,
    points: readonly Spot[],
    depth: number,
  ): Sketch
  settings(values: Inches<Settings>): Sketch
  row(name: string, at: Spot, values?: RowValues): Sketch
  trough(name: string, at: Spot, values?: Omit<Inches<Trough>, 'id' | 'kind' | 'name' | 'at'>): Sketch
  drain(name: string, points: readonly Spot[], values?: Inches<DrainLine>): Sketch
  pit(name: string, patch: Patch, values?: Inches<Sump>): Sketch
  main(name: string, points: readonly MainSpot[], values?: Inches<Main>): Sketch
  headBox(name: string, patch: Patch, values?: Inches<HeadBox>): Sketch
  /** A post, 4 x 4 in unless said otherwise. */
  post(name: string, at: Spot, values?: Inches<Obstacle>): Sketch
  /** Anything that covers a patch of floor; its front faces `heading`. */
  obstacle(
    what: Obstacle['what'],
    name: string,
    patch: Patch,
    heading: Heading,
    values?: ObstacleValues,
  ): Sketch
  door(name: string, at: Spot, values?: Inches<Opening>): Sketch
  layout(): Layout
}

type Values = Record<string, unknown>

const sketchOf = (
  document: Values & { house: Values; parts: readonly Values[]; settings: Values },
): Sketch => {
  const { house, parts } = document
  const withHouse = (values: Values) => sketchOf({ ...document, house: { ...house, ...values } })
  const listed = (key: string, item: unknown) => {
    const list = house[key]
    return withHouse({ [key]: [...(Array.isArray(list) ? list : []), item] })
  }
  const part = (kind: string, schema: Schema<unknown>, name: string, placed: Values, values: object = {}) => {
    const id = `${kind}-${parts.filter((p) => p['kind'] === kind).length + 1}`
    return sketchOf({
      ...document,
      parts: [...parts, { ...placed, ...converted(schema, values), kind, id, name }],
    })
  }
  return {
    outline: (corners) => withHouse({ outline: corners.map(spot) }),
    house: (values) => withHouse(converted(houseSchema, values)),
    curved: (edge, profile) =>
      listed('curvedWalls', {
        edge,
        profile: profile.map(([from, height]) => ({ distanceMm: inches(from), heightMm: inches(height) })),
      }),
    level: (at, level) => listed('spotLevels', { at: spot(at), levelMm: inches(level) }),
    benchmark: (name, at, level) =>
      withHouse({ benchmark: { name, at: spot(at), levelMm: inches(level), valueMm: feet(100) } }),
    buried: (what, name, points, depth) =>
      listed('services', { what, name, points: points.map(spot), depthMm: inches(depth) }),
    settings: (values) =>
      sketchOf({ ...document, settings: { ...document.settings, ...converted(settingsSchema, values) } }),
    row: (name, at, values) => part('rack-row', rackRowSchema, name, { at: spot(at) }, values),
    trough: (name, at, values) => part('trough', troughSchema, name, { at: spot(at) }, values),
    drain: (name, points, values) =>
      part('drain-line', drainLineSchema, name, { points: points.map(spot) }, values),
    pit: (name, patch, values) => part('sump', sumpSchema, name, standing(patch, 90), values),
    main: (name, points, values) => part('main', mainSchema, name, { points: points.map(mainSpot) }, values),
    headBox: (name, patch, values) => part('head-box', headBoxSchema, name, standing(patch, 90), values),
    post: (name, at, values) =>
      part(
        'obstacle',
        obstacleSchema,
        name,
        { at: spot(at), what: 'post' },
        { length: 4, width: 4, ...values },
      ),
    obstacle: (what, name, patch, heading, values) =>
      part('obstacle', obstacleSchema, name, { ...standing(patch, heading), what }, values),
    door: (name, at, values) => part('opening', openingSchema, name, { at: spot(at) }, values),
    layout: () => layoutSchema.parse(document),
  }
}

export const bay = (size: string, title = 'Sketch'): Sketch => {
  const [widthMm, lengthMm] = sizeOf(size)
  const { house } = emptyBay(widthMm, lengthMm, title)
  return sketchOf({
    format: FORMAT,
    version: VERSION,
    title,
    house: { outline: house.outline },
    parts: [],
    settings: {},
  })
}
