import { elementCodec, id, optional, shortString, string, text, xPath } from '../../codec/index.js';
import { auditFields } from './audit-fields.js';

/** A node or resource was made: the one named, else the node itself. */
export const created = elementCodec('Created', {
  ...auditFields,
  /** ID of what was made. */
  ref: optional('ref', text),
  xPath: optional('XPath', xPath),
  templateId: optional('TemplateID', shortString),
  templateVersion: optional('TemplateVersion', string),
});

/** Something was changed later. */
export const modified = elementCodec('Modified', {
  ...auditFields,
  /** ID of the node that was changed (until version 1.1). */
  jRef: optional('jRef', id),
  xPath: optional('XPath', xPath),
});

export const deleted = elementCodec('Deleted', { ...auditFields, xPath: optional('XPath', xPath) });
