export { orderFromProduct } from './order-from-product.js';
export { orderSchema, readOrder } from './order-schema.js';
export { plantJsonSchema, plantSchema, readPlantDefinition } from './plant-schema.js';
