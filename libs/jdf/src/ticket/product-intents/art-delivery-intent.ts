import {
  boolean,
  children,
  integerOrInfinity,
  integerRangeList,
  nmtoken,
  nmtokens,
  oneOf,
  optional,
  required,
  url,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { company, contact } from '../views/contact.js';
import { referable, referables } from '../views/referable.js';
import { durationSpan, enumerationSpan, nameSpan, spans, stringSpan, timeSpan } from './span-types.js';

const preflightStatus = optional(
  'PreflightStatus',
  oneOf(['NotPerformed', 'WithErrors', 'WithWarnings', 'WithoutErrors']),
);

const terms = {
  preflightStatus,
  ...spans(timeSpan, 'ArtDeliveryDate'),
  ...spans(durationSpan, 'ArtDeliveryDuration'),
  ...spans(enumerationSpan, 'ArtHandling', 'DeliveryCharge', 'Transfer'),
  ...spans(nameSpan, 'Method', 'ReturnMethod'),
  ...spans(stringSpan, 'ServiceLevel'),
  company: referable(company),
  contacts: referables(contact),
};

/** One thing that the customer hands in: files, proofs, originals. */
const artDelivery = fullElement('ArtDelivery', {
  ...terms,
  artDeliveryType: required('ArtDeliveryType', nmtoken),
  amount: optional('Amount', integerOrInfinity),
  hasBleeds: optional('HasBleeds', boolean),
  isTrapped: optional('IsTrapped', boolean),
  pageList: optional('PageList', integerRangeList),
  preflightOutput: optional('PreflightOutput', url),
});

export const artDeliveryIntent = fullElement('ArtDeliveryIntent', {
  ...terms,
  returnList: optional('ReturnList', nmtokens),
  deliveries: children(artDelivery),
});
