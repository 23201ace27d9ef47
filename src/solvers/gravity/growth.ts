/** How much longer, mm, a length grows when it warms by so many degrees Celsius, at so much of its length a degree. */
export const growthMm = (lengthMm: number, perC: number, warmerC: number): number => lengthMm * perC * warmerC
