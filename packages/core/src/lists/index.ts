export { addToGroup, grouped } from './grouped.ts';
