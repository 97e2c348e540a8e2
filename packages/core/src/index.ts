export * from './evidence/index.ts';
export * from './pins/index.ts';
export * from './pitch/index.ts';
export * from './rescale/index.ts';
export * from './scale/index.ts';
export * from './strings/index.ts';
export * from './tables/index.ts';
export * from './units/index.ts';
