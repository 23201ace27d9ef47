import type { PartId } from './ids'

/** The bay at one moment after its pumps stopped, or started again. */
export interface StopMoment {
  readonly seconds: number
  /** Water level of each pit, mm from the benchmark's zero. */
  readonly pitMm: ReadonlyMap<PartId, number>
  /** What has run over so far, L. */
  readonly spiltL: ReadonlyMap<PartId, number>
  /** What is left of the water that stood in each row's towers, its troughs, and each drain, as shares of the start. */
  readonly towerShare: ReadonlyMap<PartId, number>
  readonly troughShare: ReadonlyMap<PartId, number>
  readonly drainShare: ReadonlyMap<PartId, number>
}
