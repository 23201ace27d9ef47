/** Times inside the program are minutes; what solvers step through is seconds. */
export const SECONDS_PER_MINUTE = 60
export const MINUTES_PER_HOUR = 60
export const HOURS_PER_DAY = 24

/** Seconds to minutes. */
export const toMinutes = (seconds: number): number => seconds / SECONDS_PER_MINUTE

/** Minutes to seconds. */
export const toSeconds = (minutes: number): number => minutes * SECONDS_PER_MINUTE
