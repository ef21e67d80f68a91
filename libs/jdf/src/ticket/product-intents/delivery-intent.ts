import { boolean, children, integerOrInfinity, oneOf, optional, string } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { company, contact } from '../views/contact.js';
import { referable, referables } from '../views/referable.js';
import {
  durationSpan,
  enumerationSpan,
  nameSpan,
  numberSpan,
  spans,
  spansIn,
  stringSpan,
  timeSpan,
} from './span-types.js';

/** How, when and to whom: of the whole delivery, or of one drop. */
const terms = {
  buyerAccount: optional('BuyerAccount', string),
  pickup: optional('Pickup', boolean),
  additionalAmount: optional('AdditionalAmount', integerOrInfinity),
  ...spans(timeSpan, 'Earliest', 'Required'),
  ...spans(durationSpan, 'EarliestDuration', 'RequiredDuration'),
  ...spans(nameSpan, 'Method', 'ReturnMethod'),
  ...spans(stringSpan, 'ServiceLevel'),
  ...spans(enumerationSpan, 'SurplusHandling', 'Transfer'),
  company: referable(company),
  contacts: referables(contact),
};

/** Pieces of one product in a drop. */
const dropItemIntent = fullElement('DropItemIntent', {
  amount: optional('Amount', integerOrInfinity),
  orderedAmount: optional('OrderedAmount', integerOrInfinity),
  additionalAmount: optional('AdditionalAmount', integerOrInfinity),
  unit: optional('Unit', string),
  proof: optional('Proof', string),
  dropId: optional('DropID', string),
});

const dropIntent = fullElement('DropIntent', {
  ...terms,
  dropId: optional('DropID', string),
  items: children(dropItemIntent),
});

export const deliveryIntent = fullElement('DeliveryIntent', {
  ...terms,
  accepted: optional('Accepted', boolean),
  ownership: optional('Ownership', oneOf(['Origin', 'Destination'])),
  ...spans(enumerationSpan, 'DeliveryCharge'),
  ...spansIn('Pct', numberSpan, 'Overage', 'Underage'),
  drops: children(dropIntent),
});
