export default function ScalePage() {
  return <h2>Scale</h2>;
}
