import {
  children,
  language,
  longString,
  nmtokens,
  type Of,
  optional,
  required,
  shortString,
  string,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { comChannel, company, contact } from './contact.js';
import { referable, referables } from './referable.js';

/** What the customer wants to be told, when and through which channel (until version 1.4). */
const customerMessage = fullElement('CustomerMessage', {
  messageEvents: required('MessageEvents', nmtokens),
  showList: optional('ShowList', nmtokens),
  language: optional('Language', language),
  comChannels: referables(comChannel),
});

/** Who ordered, and under which names and numbers of his own. */
export const customerInfo = fullElement('CustomerInfo', {
  customerId: optional('CustomerID', shortString),
  customerJobName: optional('CustomerJobName', longString),
  customerOrderId: optional('CustomerOrderID', shortString),
  customerProjectId: optional('CustomerProjectID', string),
  billingCode: optional('BillingCode', string),
  /** Until version 1.0; later the company is that of a contact. */
  company: referable(company),
  contacts: referables(contact),
  messages: children(customerMessage),
});
export type CustomerInfo = Of<typeof customerInfo>;
