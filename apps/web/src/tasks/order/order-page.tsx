import { lazy, Suspense } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { SuppliesPlace } from './supplies-place.tsx';
import './order.css';

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
  supplies: 'Supplies',
  bass: 'Bass strings',
  orders: 'Orders',
  stock: 'Suppliers and stock',
  papers: 'Papers',
} as const;
type PartName = keyof typeof parts;
const partNames = Object.keys(parts) as PartName[];

/** What is needed, what the shelf has, what is bought from whom, and what came. */
export function OrderPage({ part }: { part: string | undefined }) {
  const { desk } = useDesk();
  const name: PartName = part !== undefined && part in parts ? (part as PartName) : 'supplies';
  return (
    <>
      <div className="task-head">
        <h2 className="unseen">Order</h2>
        <nav aria-label="Parts of Order" className="part-bar">
          {partNames.map((one) => (
            <a
              key={one}
              href={hashOf({ place: 'job', job: desk.id, task: 'order', part: one })}
              aria-current={one === name ? 'page' : undefined}
            >
              {parts[one]}
            </a>
          ))}
        </nav>
      </div>
      <Suspense fallback={<p>Opening …</p>}>
        <Part name={name} />
      </Suspense>
    </>
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
