import { Leftovers } from './Leftovers'
import { LumberOnOffer } from './LumberOnOffer'
import { MeasuredTable } from './MeasuredTable'
import './stock.css'

/** What the yard sells and what it really measures, and what lies about to be used up. */
export default function StockView() {
  return (
    <div className="water-view stock">
      <section className="stock-part">
        <h3>Stock as it measures</h3>
        <p>
          Measure five boards of the bundle, and one stick of each conduit with a caliper before the first
          hole is drilled: a wrong diameter drills every riser wrong. What you type holds for the whole bay,
          from hole heights and cross-pieces to halves and cuts; a field left empty is as the catalogue has
          it.
        </p>
        <MeasuredTable />
      </section>
      <div className="stock-two">
        <LumberOnOffer />
        <section className="stock-part">
          <h3>Leftovers</h3>
          <p>They cost nothing, so plans use them up before a board is bought.</p>
          <Leftovers />
        </section>
      </div>
    </div>
  )
}
