import { config } from 'zod';

// The page is served with a policy that forbids code made from text. Schemas would try that first, for speed.
config({ jitless: true });
