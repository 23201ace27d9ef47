import type { Body, Built } from '../model/built'
import { rememberEach, rememberLast } from '../model/remember'

const doorsIn = rememberEach<Built, null, readonly Body[]>(({ bodies }) =>
  bodies.filter(({ role }) => role === 'door' || role === 'person-door'),
)

/** Every door of the bay, for carts or for people. */
export const doorsOf = rememberLast((built: readonly Built[]): readonly Body[] =>
  built.flatMap((b) => doorsIn(b, null)),
)
