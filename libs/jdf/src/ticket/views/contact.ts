import {
  children,
  countryCode,
  languages,
  nmtoken,
  nmtokens,
  type Of,
  oneOf,
  optional,
  required,
  string,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { referable, referables } from './referable.js';
import { textElement } from './text-element.js';

export const address = fullElement('Address', {
  addressUsage: optional('AddressUsage', nmtoken),
  street: optional('Street', string),
  civicNumber: optional('CivicNumber', string),
  postBox: optional('PostBox', string),
  postalCode: optional('PostalCode', string),
  city: optional('City', string),
  region: optional('Region', string),
  country: optional('Country', string),
  countryCode: optional('CountryCode', countryCode),
  /** Only of an address that is a resource of its own. */
  lines: children(textElement('AddressLine')),
  extended: children(textElement('ExtendedAddress')),
});
export type Address = Of<typeof address>;

const channelTypes = [
  'ComputerName',
  'Email',
  'Fax',
  'InstantMessaging',
  'JMF',
  'Mobile',
  'Phone',
  'PrivateDirectory',
  'WWW',
] as const;

/** A telephone, a mail box or any other way to reach somebody. */
export const comChannel = fullElement('ComChannel', {
  channelType: required('ChannelType', oneOf(channelTypes)),
  channelTypeDetails: optional('ChannelTypeDetails', nmtoken),
  channelUsage: optional('ChannelUsage', nmtokens),
  locator: required('Locator', string),
});
export type ComChannel = Of<typeof comChannel>;

export const person = fullElement('Person', {
  namePrefix: optional('NamePrefix', string),
  firstName: optional('FirstName', string),
  additionalNames: optional('AdditionalNames', string),
  familyName: optional('FamilyName', string),
  nameSuffix: optional('NameSuffix', string),
  phoneticFirstName: optional('PhoneticFirstName', string),
  phoneticLastName: optional('PhoneticLastName', string),
  jobTitle: optional('JobTitle', string),
  languages: optional('Languages', languages),
  address: referable(address),
  comChannels: referables(comChannel),
});
export type Person = Of<typeof person>;

export const company = fullElement('Company', {
  organizationName: required('OrganizationName', string),
  organizationalUnits: children(textElement('OrganizationalUnit')),
});
export type Company = Of<typeof company>;

/** Who to turn to, and for what: ContactTypes are Customer, Delivery, Billing and such. */
export const contact = fullElement('Contact', {
  contactTypes: required('ContactTypes', nmtokens),
  contactTypeDetails: optional('ContactTypeDetails', string),
  userId: optional('UserID', string),
  company: referable(company),
  person: referable(person),
  address: referable(address),
  comChannels: referables(comChannel),
});
export type Contact = Of<typeof contact>;
