import {
  child,
  children,
  elementCodec,
  integer,
  kept,
  notNamed,
  number,
  type Of,
  oneOf,
  optional,
  required,
  text,
} from '../codec/index.js';
import { base, fullElement } from './base.js';

const changedAttribute = fullElement('ChangedAttribute', {
  attributeName: required('AttributeName', text),
  elementType: required('ElementType', text),
  elementId: optional('ElementID', text),
  oldValue: required('OldValue', text),
  newValue: required('NewValue', text),
});

const changedPath = fullElement('ChangedPath', {
  path: required('Path', text),
  modification: required('Modification', oneOf(['Create', 'Delete', 'Modify'])),
  oldValue: optional('OldValue', text),
  newValue: optional('NewValue', text),
});

const notGeneric = notNamed('Comment', 'GeneralID', 'Preview', 'PreviewRef');

const added = fullElement('Added', { elements: kept(notGeneric) });
const removed = fullElement('Removed', { elements: kept(notGeneric) });

/** What made a signal go out: a time or amount that was reached, or the changes since the last one. */
export const trigger = elementCodec('Trigger', {
  comment: base.comment,
  generalIds: base.generalIds,
  repeatStep: optional('RepeatStep', integer),
  repeatTimeS: optional('RepeatTime', number),
  changedAttributes: children(changedAttribute),
  changedPaths: children(changedPath),
  added: child(added),
  removed: child(removed),
});
export type Trigger = Of<typeof trigger>;
