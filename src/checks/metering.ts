/** A tube that takes so many times what the lateral and the level of its open ends vary by is the meter. Common practice, no source. */
const TIMES = 5

/** Least head that a tube must take at its flow, mm, for the loss along its lateral and how level its open ends hang. */
export const meteringNeed = (dropMm: number, outletErrorMm: number): number =>
  TIMES * (dropMm + outletErrorMm)
