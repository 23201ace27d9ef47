import { useDeferredValue, useMemo } from 'react'
import { shopList } from '../../../evaluate/shop/shopList'
import { Fold } from '../../../sidebar/Fold'
import { usePlanner, usePlannerState } from '../../../store/react'
import { useCutLists } from '../../../store/useCutLists'
import { RowFigures } from '../RowFigures'
import { today } from '../prices/today'
import '../chart/chart.css'
import { Alternatives } from './Alternatives'
import './shop.css'
import { ShopBanner } from './ShopBanner'
import { shopText } from '../../../sheets/shop/shopText'
import { bannerWords, staleIn, totalRows, unmadeWords } from '../../../sheets/shop/shopWords'
import { SupplierTable } from './SupplierTable'
import { useTicks } from './useTicks'

/** Everything to buy, by supplier and aisle, with what it comes to. */
export default function ShopView() {
  const planner = usePlanner()
  const cuts = useDeferredValue(useCutLists())
  const [settledCounts, counter, title, units] = usePlannerState((state) => [
    state.evaluation.counts,
    state.evaluation.layout.counter,
    state.evaluation.layout.title,
    state.units,
  ])
  const counts = useDeferredValue(settledCounts)
  const list = useMemo(() => shopList(cuts, counts, counter), [cuts, counts, counter])
  const ticks = useTicks(title)
  const day = today()
  if (list.suppliers.length === 0)
    return <p className="water-none">Nothing to buy yet: take a rack from the parts shelf.</p>
  const worth = bannerWords(list.totals, staleIn(list, day))
  const banner = [...worth, ...unmadeWords(cuts)]
  const copy = () =>
    void navigator.clipboard.writeText(shopText(list, { title, day, banner, counter, units })).then(
      () => planner.set({ notice: { tone: 'said', text: 'The shop list is copied as text.' } }),
      () =>
        planner.set({
          notice: { tone: 'trouble', text: 'The browser did not let the list be copied. Print it instead.' },
        }),
    )
  const print = () => void import('./printShop').then(({ printShop }) => printShop(planner.store.getState()))
  return (
    <div className="water-view shop">
      <ShopBanner words={banner} />
      <div className="shop-sums">
        <RowFigures
          figures={totalRows(list.totals, counter.tax, counter.currency).map(([name, value]) => ({
            name,
            value,
          }))}
        />
        <div className="water-deeds">
          <button onClick={print}>Print the list</button>
          <button onClick={copy}>Copy as text</button>
          {ticks.isAny && <button onClick={ticks.clear}>Clear the ticks</button>}
        </div>
      </div>
      <Fold title="Lumber of other lengths">
        <Alternatives />
      </Fold>
      {list.suppliers.map((supplier) => (
        <SupplierTable
          key={supplier.supplier}
          list={supplier}
          ticks={ticks}
          currency={counter.currency}
          units={units}
          day={day}
        />
      ))}
      <p className="water-note">
        Leftovers on hand and boards that are sawn are not bought again. Ticks stay on this device and are no
        part of the bay.
      </p>
    </div>
  )
}
