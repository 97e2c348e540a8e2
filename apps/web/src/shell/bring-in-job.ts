import type { Ulid } from '@becket/journal';
import { type BroughtInJob, bringInJob, openDemoJob } from '@becket/tasks';
import type { Device } from '../desk/device.ts';

/** Brings a saved job in: a zip with its photos, or its journal alone. Throws as `bringInJob` does. */
export async function bringInJobFile(device: Device, file: File): Promise<BroughtInJob> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return bringInJob(device.context(), { bytes, fileName: file.name });
}

/** A demo job of an invented piano, on this device. */
export async function openDemo(device: Device): Promise<Ulid> {
  const { id } = await openDemoJob(device.context());
  return id;
}
