export default function TakeOffView() {
  return <h2>Take-off</h2>
}
