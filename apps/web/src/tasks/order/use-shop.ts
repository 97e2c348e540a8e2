export { useShop } from '../../desk/use-shop.ts';
