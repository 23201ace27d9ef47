export default function CostView() {
  return <h2>Cost &amp; hours</h2>
}
