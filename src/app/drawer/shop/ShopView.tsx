export default function ShopView() {
  return <h2>Shop list</h2>
}
