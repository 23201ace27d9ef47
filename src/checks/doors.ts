import type { Body, Built } from '../model/built'

/** Every door of the bay, for carts or for people. */
export const doorsOf = (built: readonly Built[]): Body[] =>
  built.flatMap(({ bodies }) => bodies.filter(({ role }) => role === 'door' || role === 'person-door'))
