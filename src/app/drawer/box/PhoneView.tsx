export default function PhoneView() {
  return <p className="water-none">…</p>
}
