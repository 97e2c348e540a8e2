import { message } from '@becket/core';
import { lazy } from 'react';
import { PartFrame } from '../../desk/part-frame.tsx';
import './order.css';

const SuppliesPlace = lazy(() =>
  import('./supplies-place.tsx').then(({ SuppliesPlace: place }) => ({ default: place })),
);
const BassPlace = lazy(() => import('./bass-place.tsx').then(({ BassPlace: place }) => ({ default: place })));
const OrdersPlace = lazy(() =>
  import('./orders-place.tsx').then(({ OrdersPlace: place }) => ({ default: place })),
);
const StockPlace = lazy(() =>
  import('./stock-place.tsx').then(({ StockPlace: place }) => ({ default: place })),
);
const PapersPlace = lazy(() =>
  import('./papers-place.tsx').then(({ PapersPlace: place }) => ({ default: place })),
);

/** The parts of Order: name in the address, words on the screen. */
const parts = {
  supplies: message('Supplies'),
  bass: message('Bass strings'),
  orders: message('Orders'),
  stock: message('Suppliers and stock'),
  papers: message('Papers'),
} as const;
type PartName = keyof typeof parts;

/** What is needed, what the shelf has, what is bought from whom, and what came. */
export function OrderPage({ part }: { part: string | undefined }) {
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'supplies';
  return (
    <PartFrame task="order" parts={parts} shown={name}>
      <Part name={name} />
    </PartFrame>
  );
}

function Part({ name }: { name: PartName }) {
  switch (name) {
    case 'supplies':
      return <SuppliesPlace />;
    case 'bass':
      return <BassPlace />;
    case 'orders':
      return <OrdersPlace />;
    case 'stock':
      return <StockPlace />;
    case 'papers':
      return <PapersPlace />;
  }
}
