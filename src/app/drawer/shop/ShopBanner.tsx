import { usePlanner } from '../../../store/react'

/** What the sums are worth, and the way to the price book, which mends it. */
export function ShopBanner({ words }: { readonly words: readonly string[] }) {
  const planner = usePlanner()
  if (words.length === 0) return null
  return (
    <div className="shop-banner" role="note">
      <p>{words.join(' ')}</p>
      <button onClick={() => planner.set({ drawer: 'prices' })}>Open the price book</button>
    </div>
  )
}
