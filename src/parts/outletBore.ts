import { outlets } from '../catalogue/outlet'
import { choice } from '../model/fields'

/** The bore of a trough's outlet, as a row of racks and a lone trough are asked for it. The factor is 1.5 to the power 2.5. */
export const outletBore = choice(['1/2', '3/4', '1', '2'], '2', {
  label: 'Outlet bore',
  group: 'Trough',
  choices: Object.fromEntries(outlets.map(({ key, title }) => [key, title])),
  help: 'A 3/4 in outlet takes 2.8 times what a 1/2 in one takes before it gulps air, and passes the roots that plug 1/2 in; a 2 in one passes a handful.',
})
