import { config } from 'zod';

// The page is served with a policy that forbids code made from text. Schemas would try that first, for speed; they ask
// when they are made, so this has to be said before any of them is loaded.
config({ jitless: true });

await import('./start.tsx');
