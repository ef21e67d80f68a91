export {
  type AddressGuard,
  type AddressGuardSettings,
  type CheckedAddress,
  makeAddressGuard,
} from './address-guard/address-guard.js';
export { closeConnections } from './http/agents.js';
export type { ExchangeLimits } from './http/exchange.js';
export { type Fetched, fetchGuarded } from './http/fetch-guarded.js';
export { type PostOptions, type PostOutcome, postXml } from './http/post-xml.js';
