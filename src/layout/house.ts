import * as z from 'zod/mini'
import { choice, length, level, plainLevel, point, text } from '../model/fields'
import { inches, onTick } from '../units/length'

/** What is under the floor, with its depth to the top of it. */
const service = z.object({
  name: text('Buried line', { label: 'Name', group: 'Service' }, 60),
  what: choice(['wire', 'gas', 'water', 'drain', 'other'], 'other', {
    label: 'What it carries',
    group: 'Service',
    choices: { wire: 'Wire', gas: 'Gas', water: 'Water', drain: 'Drain', other: 'Something else' },
  }),
  points: z.array(point).check(z.minLength(2), z.maxLength(100)),
  depthMm: length(inches(18), { label: 'Depth', group: 'Service' }, 0, inches(240)),
})

/** Headroom near a curved wall: heights at distances from one edge of the outline, straight lines between. */
const curvedWall = z.object({
  /** Index of the outline's edge, from point `edge` to the next. */
  edge: z.int().check(z.gte(0), z.lte(199)),
  profile: z
    .array(
      z.object({
        distanceMm: length(0, { label: 'From wall', group: 'Headroom' }),
        heightMm: length(inches(72), { label: 'Height', group: 'Headroom' }),
      }),
    )
    .check(z.minLength(1), z.maxLength(50)),
})

const spotLevel = z.object({ at: point, levelMm: level(0, { label: 'Level', group: 'Floor' }) })

export const houseSchema = z.object({
  /** Inside of the walls, anticlockwise, mm. */
  outline: z.array(point).check(z.minLength(3), z.maxLength(200)),
  /** Clear height where no curved wall says less. */
  headroomMm: length(inches(120), { label: 'Headroom', group: 'House' }, inches(36), inches(1200)),
  curvedWalls: z._default(z.array(curvedWall).check(z.maxLength(200)), []),
  spotLevels: z._default(z.array(spotLevel).check(z.maxLength(1000)), []),
  benchmark: z._default(
    z.object({
      at: point,
      name: text('Benchmark', { label: 'Benchmark', group: 'House' }),
      /** What the benchmark is called on paper, such as 100 ft; every level in the file is from zero, not from here. */
      valueMm: plainLevel(inches(1200), { label: 'Benchmark value', group: 'House' }),
      /** Its level in the file's own levels. */
      levelMm: plainLevel(0, {
        label: 'Benchmark level',
        group: 'House',
        help: 'From the bay’s zero, whatever levels are counted from.',
      }),
      /** In the file's own levels. */
      closingMm: z._default(
        z.nullable(
          level(0, {
            label: 'Benchmark, read again at the end of the round',
            group: 'House',
            whenNull: 'Not read',
            help: 'Shoot the benchmark again after the last spot: over 1/8 in apart, something moved or was misread.',
          }),
        ),
        null,
      ),
    }),
    { at: { x: 0, y: 0 }, name: 'Benchmark', valueMm: onTick(inches(1200)), levelMm: 0, closingMm: null },
  ),
  services: z._default(z.array(service).check(z.maxLength(200)), []),
  /** Degrees clockwise from the plan's up to true north. */
  northDegrees: z._default(z.number().check(z.gte(-180), z.lte(180)), 0),
})

export type House = z.infer<typeof houseSchema>
export type Service = House['services'][number]
