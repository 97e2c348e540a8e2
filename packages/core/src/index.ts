export * from './pitch/index.ts';
export * from './units/index.ts';
