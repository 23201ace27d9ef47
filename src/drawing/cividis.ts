/**
 * The cividis colour map, which people with and without a colour vision deficiency read alike: dark blue for little, yellow
 * for much, lighter at every step. Ten of its 256 published colours, a ninth of the range apart.
 * Source: Nuñez, Anderton and Renslow, Optimizing colormaps with consideration for color vision deficiency to enable
 * accurate interpretation of scientific data, PLOS ONE 13(7), 2018, e0199239, supplementary table.
 */
export const CIVIDIS: readonly string[] = [
  '#00204d',
  '#00336f',
  '#39486b',
  '#575c6d',
  '#707173',
  '#8a8779',
  '#a69d75',
  '#c4b56c',
  '#e4cf5b',
  '#ffea46',
]

const channelOf = (hex: string, index: number): number =>
  Number.parseInt(hex.slice(1 + 2 * index, 3 + 2 * index), 16)

const toHex = (channel: number): string => Math.round(channel).toString(16).padStart(2, '0')

/** The colour at a share of the range, 0 for the least and 1 for the most; a share beyond has the colour of that end. */
export const cividis = (share: number): string => {
  const place = Math.min(1, Math.max(0, share)) * (CIVIDIS.length - 1)
  const index = Math.min(Math.floor(place), CIVIDIS.length - 2)
  const [from = '', to = ''] = CIVIDIS.slice(index, index + 2)
  const mixed = [0, 1, 2].map((channel) => {
    const start = channelOf(from, channel)
    return toHex(start + (channelOf(to, channel) - start) * (place - index))
  })
  return `#${mixed.join('')}`
}

/** Shades that a scale is painted in: more than an eye tells apart, few enough to fill one path each. */
export const SHADES = 24

/** Their colours, each that of the middle of its class. */
export const shadeColours: readonly string[] = Array.from({ length: SHADES }, (_, shade) =>
  cividis((shade + 0.5) / SHADES),
)

/** Class of a share of the range, from 0 to SHADES - 1. */
export const shadeOf = (share: number): number =>
  Math.min(SHADES - 1, Math.max(0, Math.floor(share * SHADES)))
