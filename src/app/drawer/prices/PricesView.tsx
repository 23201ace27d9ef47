export default function PricesView() {
  return <h2>Price book</h2>
}
