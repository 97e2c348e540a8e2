import { type BroughtInJob, bringInJob } from '@becket/tasks';
import type { Device } from '../desk/device.ts';

/** Brings a saved job in: a zip with its photos, or its journal alone. Throws as `bringInJob` does. */
export async function bringInJobFile(device: Device, file: File): Promise<BroughtInJob> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return bringInJob(device.context(), { bytes, fileName: file.name });
}
