import { FORMAT, layoutSchema, VERSION, type Layout } from './schema'

/** A new bay: four walls inside `widthMm` (west to east) by `lengthMm` (south to north), and nothing in it. */
export const emptyBay = (widthMm: number, lengthMm: number, title: string): Layout =>
  layoutSchema.parse({
    format: FORMAT,
    version: VERSION,
    title,
    house: {
      outline: [
        { x: 0, y: 0 },
        { x: widthMm, y: 0 },
        { x: widthMm, y: lengthMm },
        { x: 0, y: lengthMm },
      ],
    },
    parts: [],
    settings: {},
  })
