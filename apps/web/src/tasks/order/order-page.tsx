export function OrderPage() {
  return <h2>Order</h2>;
}
