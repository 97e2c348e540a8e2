import { createContext, useContext } from 'react';
import { useObservable } from '../parts/observable.ts';
import type { Device } from './device.ts';
import type { Settings } from './settings.ts';

export const DeviceContext = createContext<Device | undefined>(undefined);

export function useDevice(): Device {
  const device = useContext(DeviceContext);
  if (device === undefined) throw new Error('this view needs a device around it');
  return device;
}

export function useSettings(): Settings {
  return useObservable(useDevice().settings);
}
