export default function StockView() {
  return <h2>Stock</h2>
}
