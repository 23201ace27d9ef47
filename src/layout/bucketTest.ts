import * as z from 'zod/mini'
import { fields, measured, tickMm } from '../model/fields'
import { gph } from '../units/flow'
import { feet, inches } from '../units/length'

const group = 'Bucket test'

/** One tube run into a bucket by the clock, so that the bay is reckoned with the tube that it really has. */
export const bucketTest = z.object({
  stock: z.enum(['tube-1/8', 'tube-1/4']).register(fields, {
    label: 'Tube',
    group,
    choices: { 'tube-1/8': '1/8 in', 'tube-1/4': '1/4 in' },
    unit: 'choice',
  }),
  lengthMm: tickMm(inches(3), feet(20)).register(fields, {
    label: 'Length of the tube',
    group,
    unit: 'length',
  }),
  headMm: tickMm(inches(1 / 2), feet(20)).register(fields, {
    label: 'Water above the end of the tube',
    group,
    unit: 'length',
  }),
  flowLph: measured(gph(0.1), gph(60)).register(fields, {
    label: 'Flow into the bucket',
    group,
    unit: 'flow',
  }),
  waterC: measured(2, 40).register(fields, { label: 'Temperature of the water', group, unit: 'temperature' }),
})

export type BucketTest = z.infer<typeof bucketTest>
