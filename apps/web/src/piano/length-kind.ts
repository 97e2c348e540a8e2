export { lengthKindOf } from '@becket/journal';
