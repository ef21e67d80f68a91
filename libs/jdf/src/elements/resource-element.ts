import { oneOf, optional, text, time } from '../codec/index.js';
import { resourceStatuses } from '../enumerations.js';

/** What an element that may also stand as a resource carries. Source: the official JDF 1.9 schema (JDFCore). */
export const resourceElement = {
  id: optional('ID', text),
  updateId: optional('UpdateID', text),
  productId: optional('ProductID', text),
  class: optional('Class', oneOf(['Implementation'])),
  status: optional('Status', oneOf(resourceStatuses)),
  agentName: optional('AgentName', text),
  agentVersion: optional('AgentVersion', text),
  author: optional('Author', text),
  catalogId: optional('CatalogID', text),
  catalogDetails: optional('CatalogDetails', text),
  expires: optional('Expires', time),
};
