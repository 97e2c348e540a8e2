export * from './evidence/index.ts';
export * from './pitch/index.ts';
export * from './rescale/index.ts';
export * from './units/index.ts';
