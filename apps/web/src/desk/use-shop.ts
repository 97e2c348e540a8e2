import { SHOP_JOURNAL } from '@becket/journal';
import { readShop, type Shop, shopOf } from '@becket/tasks';
import { useEffect, useState } from 'react';
import { latestOnly } from '../parts/latest-only.ts';
import { useDevice } from './use-device.ts';

const emptyShop = shopOf([]);

/** The shop as this device knows it: read again whenever something of it arrives, from here or from elsewhere. */
export function useShop(): Shop {
  const { store, exchange } = useDevice();
  const [shop, setShop] = useState<Shop>(emptyShop);
  useEffect(() => {
    let isOpen = true;
    const take = latestOnly<Shop>((next) => {
      if (isOpen) setShop(next);
    });
    const read = () =>
      void take(readShop({ store })).catch(() => {
        // What cannot be read now stands as it was; the next arrival reads again.
      });
    read();
    // A device that never had the shop's journal has to ask for it once; a server that is away only delays that.
    exchange.bring(SHOP_JOURNAL).then(read, () => {});
    const stop = store.onArrival((job) => {
      if (job === SHOP_JOURNAL) read();
    });
    return () => {
      isOpen = false;
      stop();
    };
  }, [store, exchange]);
  return shop;
}
