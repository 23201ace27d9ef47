import { inches } from '../units/length'

/** 29 CFR 1910.36(g)(2): an exit access is at least 28 in wide at all points. */
export const EXIT_ACCESS_MM = inches(28)
